namespace Endurance.Quantities;

internal static class Finite
{
    /// <summary>Returns the number, or throws when it is NaN or infinite.</summary>
    public static double Checked(double value) =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "A quantity must be a finite number.");
}
