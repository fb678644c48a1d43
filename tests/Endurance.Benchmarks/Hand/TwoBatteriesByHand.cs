using Endurance.Tests.Reference;

namespace Endurance.Benchmarks.Hand;

/// <summary>Two batteries through two diodes into 3 A, 50 W and 24 ohm: one equation in the volts across the second junction.</summary>
internal struct TwoBatteriesByHand : IHandNetwork
{
    private const double Cutoff = 10.4;

    /// <summary>Of Newton; a solve from a near start takes one or two.</summary>
    private const int MostSteps = 20;

    private readonly double lastStep;
    private HandBattery first;
    private HandBattery second;
    private Extrapolation past;
    private double volts;
    private double amperes1;
    private double amperes2;

    public TwoBatteriesByHand(double tolerance)
    {
        const double start = 0.2;
        var batteries = ReferenceNetworks.TwoBatteriesTwoDiodes.Batteries;
        lastStep = new HandDiode(tolerance).LastStep;
        first = new HandBattery(batteries[0], 8e-3 + HandDiode.Series);
        second = new HandBattery(batteries[1], 12e-3 + HandDiode.Series);
        past = new Extrapolation(start);
        Solve(0, 1, 1);
        first.SetModeFor(amperes1);
        second.SetModeFor(amperes2);
    }

    public void Evaluate(double t, double z1, double z2, out double rate1, out double rate2)
    {
        Solve(t, z1, z2);
        rate1 = first.Rate(amperes1);
        rate2 = second.Rate(amperes2);
    }

    public readonly bool IsAnyDue(double z1, double z2) =>
        z1 < first.Knot || z2 < second.Knot || volts < Cutoff || first.ModeGuard(amperes1) < 0 || second.ModeGuard(amperes2) < 0;

    public readonly double Guard(int index, double z1, double z2) => index switch
    {
        0 => z1 - first.Knot,
        1 => z2 - second.Knot,
        2 => first.ModeGuard(amperes1),
        3 => second.ModeGuard(amperes2),
        _ => volts - Cutoff,
    };

    public bool Pass(int index)
    {
        switch (index)
        {
            case 0:
                first.NextSegment();
                return false;
            case 1:
                second.NextSegment();
                return false;
            case 2:
                first.SetMode(!first.IsFast);
                return false;
            case 3:
                second.SetMode(!second.IsFast);
                return false;
            default:
                return true;
        }
    }

    public readonly double ToKnot(double z1, double z2, double rate1, double rate2) => Math.Min(first.ToKnot(z1, rate1), second.ToKnot(z2, rate2));

    private void Solve(double t, double z1, double z2)
    {
        double e1 = first.Emf(z1), e2 = second.Emf(z2), r1 = first.Ohms(z1), r2 = second.Ohms(z2);
        var junction = past.At(t);
        double step;
        var slope = 0.0;
        var left = MostSteps;
        do
        {
            var rise = HandDiode.Saturation * Math.Exp(junction * HandDiode.InverseEmission);
            var i2 = rise - HandDiode.Saturation;
            var slope2 = rise * HandDiode.InverseEmission;
            var v = e2 - (i2 * r2) - junction;
            var slopeV = -(slope2 * r2) - 1;
            var inverse = 1 / v;
            var i1 = 3 + (50 * inverse) + (v / 24) - i2;
            if (i1 <= 0)
            {
                junction += step = -HandDiode.Emission;
                continue;
            }

            var slope1 = (((1.0 / 24) - (50 * inverse * inverse)) * slopeV) - slope2;
            var miss = e1 - (i1 * r1) - (HandDiode.Emission * Math.Log((i1 + HandDiode.Saturation) / HandDiode.Saturation)) - v;
            slope = -(slope1 * (r1 + (HandDiode.Emission / (i1 + HandDiode.Saturation)))) - slopeV;
            step = Math.Clamp(-miss / slope, -HandDiode.Emission, HandDiode.Emission);
            junction += step;
            amperes1 = i1 + (slope1 * step);
            amperes2 = i2 + (slope2 * step);
            volts = v + (slopeV * step);
        }
        while (Math.Abs(step) > lastStep && left-- > 0);
        Finish(t, junction, slope > 0 ? left : -1);
    }

    /// <summary>Keeps a solution to start from. Where none was found, or a low one of the constant power, the rates are to be NaN.</summary>
    private void Finish(double t, double solution, int left)
    {
        if (left >= 0 && double.IsFinite(solution))
            past.Keep(t, solution);
        else
            amperes1 = volts = double.NaN;
    }
}
