namespace Endurance.Simulation;

/// <summary>Parts of a scenario switch each other without end at one instant.</summary>
public sealed class ChatteringException : Exception
{
    public ChatteringException(string parts, double minutes)
        : base(string.Create(System.Globalization.CultureInfo.InvariantCulture,
            $"{parts} switch each other on and off without end at minute {minutes:F2}. Give the load a higher restart voltage or a start-up time, or move a threshold."))
    {
        Parts = parts;
    }

    /// <summary>Names of the parts, separated by commas.</summary>
    public string Parts { get; }
}
