using System.Globalization;
using Endurance.Components;
using Endurance.Numerics;
using Endurance.Tests.Reference;

namespace Endurance.Benchmarks.Spice;

/// <summary>The reference networks as circuits for ngspice: a state of charge is the voltage of a capacitor of 1 F that a source discharges.</summary>
/// <remarks>
/// The charge tolerance is loosened, as at its default the state capacitors hold the steps far shorter than the answer needs; the
/// longest step decides. Tables are the simulator's own pwl().
/// </remarks>
internal static class SpiceDeck
{
    /// <summary>Deck that repeats the run; <paramref name="setting"/> gives its options and longest step.</summary>
    public static string Of(BenchmarkNetwork network, SpiceSetting setting, int repeats)
    {
        var (circuit, bus, cutoff) = network.IsTwoBatteries ? (TwoBatteries(), "bus", 10.4) : (MainAndEssential(), "essential", 10.5);
        return string.Create(CultureInfo.InvariantCulture, $"""
            {network.Name}
            .option temp=27 tnom=27 chgtol=1 method={setting.Method} reltol={setting.RelativeTolerance:0e+0}
            .ic v(z1)=1 v(z2)=1
            {circuit}
            .model ds d(is=20u n=1.05 rs=6m)
            .save v({bus})
            .control
            repeat {repeats}
            tran {setting.LongestStep} {(network.ExactMinutes + 0.3) * 60:F0} 0 {setting.LongestStep}
            meas tran cutoff when v({bus})={cutoff} fall=1
            destroy all
            end
            quit
            .endc
            .end

            """);
    }

    private static string TwoBatteries()
    {
        var batteries = ReferenceNetworks.TwoBatteriesTwoDiodes.Batteries;
        return $"""
            {Charge(1, batteries[0])}
            {Charge(2, batteries[1])}
            be1 p1 0 v = {Table(1, batteries[0].Emf)} - i(vm1)*(8m + {Table(1, batteries[0].Resistance)})
            be2 p2 0 v = {Table(2, batteries[1].Emf)} - i(vm2)*(12m + {Table(2, batteries[1].Resistance)})
            vm1 p1 m1 0
            vm2 p2 m2 0
            d1 m1 bus ds
            d2 m2 bus ds
            bl bus 0 i = 3 + 50/max(v(bus),1)
            rl bus 0 24
            """;
    }

    /// <summary>The main battery lets go over its last ten-thousandth of charge, and the main loads below 9 V, where the essential bus no longer feels them.</summary>
    private static string MainAndEssential()
    {
        var batteries = ReferenceNetworks.MainAndEssential.Batteries;
        return $"""
            {Charge(1, batteries[0])}
            {Charge(2, batteries[1])}
            be1 0 p1 i = max(0,min(1,v(z1)*1e4))*({Table(1, batteries[0].Emf)} - v(p1))/(5m + {Table(1, batteries[0].Resistance)})
            be2 p2 0 v = {Table(2, batteries[1].Emf)} - i(vm2)*(12m + {Table(2, batteries[1].Resistance)})
            vm1 p1 main 0
            vm2 p2 m2 0
            r3 main m3 6m
            d3 m3 essential ds
            d2 m2 essential ds
            bl main 0 i = max(0,min(1,v(main)-8))*(4 + 70/max(v(main),1))
            rl main 0 6
            be essential 0 i = 1.5 + 50/max(v(essential),1)
            re essential 0 30
            """;
    }

    private static string Charge(int i, Battery battery)
    {
        var reference = battery.ReferenceCurrent.Amperes;
        return string.Create(CultureInfo.InvariantCulture, $"""
            c{i} z{i} 0 1
            bz{i} z{i} 0 i = i(vm{i})/{battery.RatedCapacity.Coulombs}*pow(max(i(vm{i}),{reference})/{reference},{battery.PeukertExponent - 1})
            """);
    }

    private static string Table(int i, PiecewiseLinear table) =>
        $"pwl(v(z{i}),{string.Join(',', table.X.Select(x => string.Create(CultureInfo.InvariantCulture, $"{x},{table.At(x)}")))})";
}
