namespace Endurance.Benchmarks.Hand;

/// <summary>The diode of both networks, and when a solve of it is done.</summary>
internal readonly struct HandDiode
{
    public const double Saturation = 20e-6;
    public const double Series = 6e-3;

    /// <summary>n k T/q at 300.15 K, volts, with the exact constants of the SI.</summary>
    public const double Emission = 1.05 * 1.380649e-23 * 300.15 / 1.602176634e-19;

    public const double InverseEmission = 1 / Emission;

    /// <param name="tolerance">Of a state of charge in one step.</param>
    public HandDiode(double tolerance) => LastStep = Emission * Math.Sqrt(0.02 * tolerance);

    /// <summary>Volts; a Newton step below it leaves a relative error of a current of half its square over the emission voltage's.</summary>
    public double LastStep { get; }
}
