using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Numerics;

namespace Endurance.Library;

/// <summary>The chemistries that a scenario may name.</summary>
public static class ChemistryTable
{
    private const string RestVoltages = "rest voltages at 80 degF: discoverbattery.com, table 6; below 25 % from memory, unverified";
    private const string SealedExponent = "20 h and 1 h ratings of a 12 V 7.5 Ah sealed battery's data sheet (MH47929), row 1.75 V a cell";
    private const string SealedResistance =
        "printed internal resistance of 12 V 7.5 Ah and 14 Ah data sheets (20 and 13.5 mohm), rounded up; its rise towards empty from memory, unverified";

    private const string SealedCold =
        "data sheets: 12 V 14 Ah (-15, 0, 25, 40 degC) and 12 V 40 Ah (-10, 10 degC)";

    private const string StationaryCold =
        "inverse of the cell size temperature factor of IEEE 485, table 1 (from memory, unverified; agrees with the published fit -2.8117 x^3 + 4.1916 x^2 - 2.4941 x + 1.405 within 0.011)";

    private static readonly PiecewiseLinear LeadRest = OverCharge((0, 10.6), (10, 11.75), (25, 12.06), (50, 12.24), (75, 12.45), (100, 12.65));

    private static readonly PiecewiseLinear SealedRest = OverCharge((0, 10.6), (10, 11.8), (25, 12.1), (50, 12.35), (75, 12.6), (100, 12.85));

    private static readonly Sourced<PiecewiseLinear> LeadWarmResistance =
        Memory(PiecewiseLinear.FromPoints((-30, 2.6), (-20, 2.0), (0, 1.35), (25, 1), (40, 0.9)));

    private static readonly ChemistryValues Agm = new()
    {
        Chemistry = Chemistry.Agm,
        Cells = new(6, "2 V a cell"),
        Emf = Memory(SealedRest),
        EndVoltsPerCell = new(1.75, "the usual end of a 20-hour rating: US Army OS 010, armyordnance.tpub.com"),
        MilliohmAmpereHours = new(OverCharge((0, 480), (20, 290), (100, 190)), SealedResistance),
        PeukertExponent = new(1.22, SealedExponent),
        ChargeEfficiency = Memory(0.90),
        ChargeAcceptancePerHour = new(1, "the ampere-hour rule: " + Sourced<double>.CommonPractice),
        CapacityOverTemperature = new(PiecewiseLinear.FromPoints((-15, 0.65), (-10, 0.74), (0, 0.85), (10, 0.90), (25, 1), (40, 1.02)), SealedCold),
        ResistanceOverTemperature = LeadWarmResistance,
    };

    /// <summary>In the order in which they are listed to a user.</summary>
    public static ImmutableArray<ChemistryValues> All { get; } =
    [
        Agm with
        {
            Chemistry = Chemistry.Flooded,
            Emf = new(LeadRest, RestVoltages),
            MilliohmAmpereHours = Memory(OverCharge((0, 600), (20, 360), (100, 240))),
            PeukertExponent = Memory(1.25),
            ChargeEfficiency = Memory(0.85),
            CapacityOverTemperature = new(
                PiecewiseLinear.FromPoints((-3.9, 1 / 1.520), (0, 1 / 1.405), (4.4, 1 / 1.300), (10, 1 / 1.190), (25, 1), (32.2, 1 / 0.940)), StationaryCold),
        },
        Agm,
        Agm with
        {
            Chemistry = Chemistry.Gel,
            MilliohmAmpereHours = Memory(OverCharge((0, 620), (20, 380), (100, 260))),
            PeukertExponent = Memory(1.20),
            ChargeEfficiency = Memory(0.90),
        },
        NickelCadmium(),
        LithiumIronPhosphate(),
    ];

    public static ChemistryValues For(Chemistry chemistry) => All.First(values => values.Chemistry == chemistry);

    /// <summary>As a scenario writes it.</summary>
    public static string Word(Chemistry chemistry) => chemistry.ToString().ToLowerInvariant();

    private static ChemistryValues NickelCadmium() => Agm with
    {
        Chemistry = Chemistry.NiCd,
        Cells = new(10, "1.2 V a cell"),
        Emf = Memory(OverCharge((0, 10.3), (10, 12.0), (50, 12.6), (90, 13.0), (100, 13.4))),
        EndVoltsPerCell = Memory(1.0),
        MilliohmAmpereHours = Memory(OverCharge((0, 250), (20, 130), (100, 110))),
        PeukertExponent = Memory(1.15),
        ChargeEfficiency = Memory(0.75),
        CapacityOverTemperature = Memory(PiecewiseLinear.FromPoints((-30, 0.70), (-20, 0.78), (0, 0.92), (25, 1), (40, 1))),
        ResistanceOverTemperature = Memory(PiecewiseLinear.FromPoints((-30, 1.8), (-20, 1.6), (0, 1.25), (25, 1), (40, 0.95))),
    };

    private static ChemistryValues LithiumIronPhosphate() => Agm with
    {
        Chemistry = Chemistry.LiFePO4,
        Cells = new(4, "3.2 V a cell"),
        Emf = Memory(OverCharge((0, 10.4), (5, 12.3), (10, 12.8), (30, 13.0), (70, 13.2), (95, 13.35), (100, 13.5))),
        EndVoltsPerCell = Memory(2.5),
        MilliohmAmpereHours = Memory(OverCharge((0, 500), (10, 320), (100, 250))),
        PeukertExponent = Memory(1.05),
        ChargeEfficiency = Memory(0.98),
        CapacityOverTemperature = new(
            PiecewiseLinear.FromPoints((-20, 0.441), (-10, 0.664), (0, 0.802), (25, 1)), "10 Ah cell: lithink.com"),
        ResistanceOverTemperature = Memory(PiecewiseLinear.FromPoints((-20, 4), (-10, 2.8), (0, 1.9), (25, 1), (40, 0.8))),
    };

    private static Sourced<T> Memory<T>(T value) => new(value, Sourced<T>.FromMemory);

    private static PiecewiseLinear OverCharge(params ReadOnlySpan<(double Percent, double Value)> points)
    {
        var table = new (double, double)[points.Length];
        for (var i = 0; i < points.Length; i++)
            table[i] = (points[i].Percent / 100, points[i].Value);
        return PiecewiseLinear.FromPoints(table);
    }
}
