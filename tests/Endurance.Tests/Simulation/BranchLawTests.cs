using Endurance.Components;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation;

/// <summary>A solve stands on the derivatives of the current laws: where they are said to hold, they must give the law itself.</summary>
public sealed class BranchLawTests
{
    private delegate void Law(ref Branch branch);

    public static TheoryData<string> Laws => ["junction", "leaky junction", "power", "power behind a wire", "controller", "battery", "exhausted battery", "full battery", "alternator", "current"];

    [Theory]
    [MemberData(nameof(Laws))]
    public void Derivatives_WhereTheyHold_GiveTheLaw(string name)
    {
        var (law, from, to) = Of(name);
        var random = new Random(20261125);
        var held = 0;
        for (var i = 0; i < 20_000; i++)
        {
            var volts = from + ((to - from) * random.NextDouble());
            var move = (random.NextDouble() - 0.5) * Math.Pow(10, -5 * random.NextDouble());
            var moved = At(law, volts);
            if (!moved.TryMove(move))
                continue;
            held++;
            moved.Departure(move, out var unsure);
            var exact = At(law, volts + move).Amperes;

            Assert.True(Math.Abs(exact - moved.Amperes) <= unsure + (1e-12 * (1 + Math.Abs(exact))), $"{name} at {volts} V moved by {move} V: {exact} A, expanded {moved.Amperes} A, unsure by {unsure} A");
        }

        Assert.True(held > 5_000, $"{name}: the derivatives held only {held} times");
    }

    [Theory]
    [MemberData(nameof(Laws))]
    public void Slope_InsideABranch_IsTheDifferenceOfTheCurrents(string name)
    {
        const double small = 1e-6;
        var (law, from, to) = Of(name);
        var random = new Random(7);
        for (var i = 0; i < 2_000; i++)
        {
            var volts = from + ((to - from) * random.NextDouble());
            var branch = At(law, volts);
            if (!branch.TryMove(small) || !branch.TryMove(-small))
                continue;
            var slope = (At(law, volts + small).Amperes - At(law, volts - small).Amperes) / (2 * small);

            Assert.Equal(slope, branch.Siemens, 1e-6 * (1 + Math.Abs(slope)));
        }
    }

    private static (Law Law, double From, double To) Of(string name) => name switch
    {
        "junction" => (JunctionLaw(0), -0.5, 1.2),
        "leaky junction" => (JunctionLaw(1e-3), -0.5, 0.5),
        "power" => ((ref Branch branch) => BranchLaw.ConstantPower(ref branch, 60, 0), 0.04, 15),
        "power behind a wire" => ((ref Branch branch) => BranchLaw.ConstantPower(ref branch, 60, 0.05), 3, 15),
        "controller" => ((ref Branch branch) => BranchLaw.IdealDiode(ref branch, 0.005, 0.03, 0.01), -0.05, 0.2),
        "battery" => ((ref Branch branch) => BranchLaw.Battery(ref branch, 12.6, 0.02, double.PositiveInfinity, exhausted: false), -14, -11),
        "exhausted battery" => ((ref Branch branch) => BranchLaw.Battery(ref branch, 10.5, 0.05, double.PositiveInfinity, exhausted: true), -12, -9),
        "full battery" => ((ref Branch branch) => BranchLaw.Battery(ref branch, 12.8, 0.02, 3, exhausted: false), -14, -12),
        "alternator" => ((ref Branch branch) => BranchLaw.Regulated(ref branch, 14.2, 0.01, 60), -15, -13),
        "current" => ((ref Branch branch) => BranchLaw.ConstantCurrent(ref branch, 4, 1), -0.5, 3),
        _ => throw new ArgumentException(name, nameof(name)),
    };

    private static Law JunctionLaw(double leakage)
    {
        var junction = new JunctionState(new CompiledFeed(new Feed { Name = "feed", From = "a", To = "b", Diode = Schottky(microamperes: 20, ideality: 1.05, milliohms: 6) }, 0, 1, -1), 300.15);
        return (ref Branch branch) => BranchLaw.Junction(ref branch, junction, leakage);
    }

    private static Branch At(Law law, double volts)
    {
        var branch = new Branch { Volts = volts };
        law(ref branch);
        return branch;
    }
}
