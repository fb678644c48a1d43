using System.CommandLine.Parsing;
using Endurance.Yaml.Units;

namespace Endurance.Cli.Arguments;

/// <summary>Quantities typed on the command line: a number with its unit, as in a scenario.</summary>
internal static class TypedQuantity
{
    /// <summary>For an option that takes one; the value is in SI.</summary>
    public static Func<ArgumentResult, double?> Of(string option, QuantityRange range) => result =>
        Read(result, option, result.Tokens[0].Value, range);

    /// <summary>For an option that may be given several times.</summary>
    public static Func<ArgumentResult, double[]> Several(string option, QuantityRange range) => result =>
        [.. result.Tokens.Select(token => Read(result, option, token.Value, range)).OfType<double>()];

    /// <summary><see langword="null"/> after an error.</summary>
    public static double? Read(ArgumentResult result, string option, string text, QuantityRange range)
    {
        var reading = QuantityReader.Read(text, range);
        if (reading.Fault is { } fault)
            result.AddError($"{option}: {fault.Sentence}");
        return reading.Value;
    }
}
