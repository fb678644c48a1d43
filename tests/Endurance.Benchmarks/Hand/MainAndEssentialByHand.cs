using Endurance.Tests.Reference;

namespace Endurance.Benchmarks.Hand;

/// <summary>
/// Main battery and main bus, a diode to the essential bus, a backup battery behind another: one equation in the volts across the
/// first junction; once the main battery is exhausted, one in the backup battery's current.
/// </summary>
internal struct MainAndEssentialByHand : IHandNetwork
{
    private const double Cutoff = 10.5;
    private const double NormalOhms = 6e-3 + HandDiode.Series;

    /// <summary>Of Newton; a solve from a near start takes one or two.</summary>
    private const int MostSteps = 20;

    private readonly double lastStep;
    private HandBattery main;
    private HandBattery backup;
    private Extrapolation past;
    private bool isMainDead;
    private double volts;
    private double mainAmperes;
    private double backupAmperes;

    public MainAndEssentialByHand(double tolerance)
    {
        const double start = 0.3;
        var batteries = ReferenceNetworks.MainAndEssential.Batteries;
        lastStep = new HandDiode(tolerance).LastStep;
        main = new HandBattery(batteries[0], 5e-3);
        backup = new HandBattery(batteries[1], 12e-3 + HandDiode.Series);
        past = new Extrapolation(start);
        SolveBoth(0, 1, 1);
        main.SetModeFor(mainAmperes);
        backup.SetModeFor(backupAmperes);
    }

    public void Evaluate(double t, double z1, double z2, out double rate1, out double rate2)
    {
        if (isMainDead)
            SolveBackup(t, z2);
        else
            SolveBoth(t, z1, z2);
        rate1 = isMainDead ? 0 : main.Rate(mainAmperes);
        rate2 = backup.Rate(backupAmperes);
    }

    public readonly bool IsAnyDue(double z1, double z2) =>
        z2 < backup.Knot || volts < Cutoff || backup.ModeGuard(backupAmperes) < 0
            || (!isMainDead && (z1 < main.Knot || main.ModeGuard(mainAmperes) < 0));

    public readonly double Guard(int index, double z1, double z2) => index switch
    {
        0 => isMainDead ? 1 : z1 - main.Knot,
        1 => z2 - backup.Knot,
        2 => isMainDead ? 1 : main.ModeGuard(mainAmperes),
        3 => backup.ModeGuard(backupAmperes),
        _ => volts - Cutoff,
    };

    public bool Pass(int index)
    {
        switch (index)
        {
            case 0:
                isMainDead = !main.NextSegment();
                if (isMainDead)
                    past = new Extrapolation(backupAmperes);
                return false;
            case 1:
                backup.NextSegment();
                return false;
            case 2:
                main.SetMode(!main.IsFast);
                return false;
            case 3:
                backup.SetMode(!backup.IsFast);
                return false;
            default:
                return true;
        }
    }

    public readonly double ToKnot(double z1, double z2, double rate1, double rate2) => isMainDead
        ? backup.ToKnot(z2, rate2)
        : Math.Min(main.ToKnot(z1, rate1), backup.ToKnot(z2, rate2));

    private void SolveBoth(double t, double z1, double z2)
    {
        double e1 = main.Emf(z1), e2 = backup.Emf(z2), r1 = main.Ohms(z1), r2 = backup.Ohms(z2);
        var square = 1 + (r1 / 6);
        var junction = past.At(t);
        double step;
        var slope = 0.0;
        var left = MostSteps;
        do
        {
            // The main bus from its quadratic, v (1 + r/6) = e - r (4 + i) - 70 r/v; then the essential bus and the backup's current.
            var rise = HandDiode.Saturation * Math.Exp(junction * HandDiode.InverseEmission);
            var normal = rise - HandDiode.Saturation;
            var slopeNormal = rise * HandDiode.InverseEmission;
            var half = e1 - (r1 * (4 + normal));
            var root = Math.Sqrt((half * half) - (280 * r1 * square));
            var v1 = (half + root) / (2 * square);
            var slopeV1 = -r1 * slopeNormal * v1 / root;
            var v = v1 - (normal * NormalOhms) - junction;
            var slopeV = slopeV1 - (slopeNormal * NormalOhms) - 1;
            var inverse = 1 / v;
            var reserve = 1.5 + (50 * inverse) + (v / 30) - normal;
            if (reserve <= 0)
            {
                junction += step = -HandDiode.Emission;
                continue;
            }

            var slopeReserve = (((1.0 / 30) - (50 * inverse * inverse)) * slopeV) - slopeNormal;
            var miss = e2 - (reserve * r2) - (HandDiode.Emission * Math.Log((reserve + HandDiode.Saturation) / HandDiode.Saturation)) - v;
            slope = -(slopeReserve * (r2 + (HandDiode.Emission / (reserve + HandDiode.Saturation)))) - slopeV;
            step = Math.Clamp(-miss / slope, -HandDiode.Emission, HandDiode.Emission);
            junction += step;
            backupAmperes = reserve + (slopeReserve * step);
            mainAmperes = (e1 - v1 - (slopeV1 * step)) / r1;
            volts = v + (slopeV * step);
        }
        while (Math.Abs(step) > lastStep && left-- > 0);
        Finish(t, junction, slope > 0 ? left : -1);
    }

    private void SolveBackup(double t, double z2)
    {
        double e2 = backup.Emf(z2), r2 = backup.Ohms(z2);
        var reserve = past.At(t);
        double step;
        var slope = 0.0;
        var left = MostSteps;
        do
        {
            var sum = reserve + HandDiode.Saturation;
            var v = e2 - (reserve * r2) - (HandDiode.Emission * Math.Log(sum / HandDiode.Saturation));
            var slopeV = -r2 - (HandDiode.Emission / sum);
            var inverse = 1 / v;
            var miss = 1.5 + (50 * inverse) + (v / 30) - reserve;
            slope = (((1.0 / 30) - (50 * inverse * inverse)) * slopeV) - 1;
            step = -miss / slope;
            reserve += step;
            volts = v + (slopeV * step);
        }
        while (Math.Abs(step) > lastStep && left-- > 0);
        backupAmperes = reserve;
        Finish(t, reserve, slope < 0 ? left : -1);
    }

    /// <summary>Keeps a solution to start from. Where none was found, or a low one of the constant power, the rates are to be NaN.</summary>
    private void Finish(double t, double solution, int left)
    {
        if (left >= 0 && double.IsFinite(solution))
            past.Keep(t, solution);
        else
            backupAmperes = volts = double.NaN;
    }
}
