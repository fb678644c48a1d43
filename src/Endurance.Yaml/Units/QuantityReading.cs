namespace Endurance.Yaml.Units;

/// <summary>A value in SI, or what is wrong with the text.</summary>
internal sealed record QuantityReading
{
    /// <summary><see langword="null"/> when there is a fault.</summary>
    public double? Value { get; init; }

    public QuantityFault? Fault { get; init; }

    public static QuantityReading Of(double value) => new() { Value = value };

    public static QuantityReading Wrong(string code, string message, string? expected, string? nearest = null, int at = 0) =>
        new() { Fault = new QuantityFault(code, message, expected, nearest, at) };
}

/// <param name="Code">Of the diagnostic.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Expected">What would be right.</param>
/// <param name="Nearest">The unit that was probably meant.</param>
/// <param name="At">Index in the text where the fault begins.</param>
internal sealed record QuantityFault(string Code, string Message, string? Expected, string? Nearest, int At)
{
    /// <summary>What is wrong and what would be right, in one line.</summary>
    public string Sentence => Expected is null ? $"{Message}." : $"{Message}; expected {Expected}.";
}
