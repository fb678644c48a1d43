using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Parsing;
using Endurance.Cli.Arguments;
using Endurance.Components;
using Endurance.Scenarios;
using Endurance.Studies.Wiring;

namespace Endurance.Cli.Commands;

/// <summary>The words of <c>endurance wiring</c> on the command line.</summary>
internal sealed class WiringCommandOptions
{
    private const string InBundle = "in_bundle";
    private const string FreeAir = "free_air";
    private static readonly string[] LoadTypes = ["lamp", "inductive", "resistive", "motor"];

    private readonly Option<string> _insulation =
        Choice.Option("--insulation", "DEGC", "Conductor temperature that the insulation stands, degC: 105, 150 or 200. Default: 150.", "105", "150", "200");

    private readonly Option<string> _bundle =
        Choice.Option("--bundle", "PLACE", $"How the wires run: {InBundle} or {FreeAir}. Default: {InBundle}.", InBundle, FreeAir);

    private readonly Option<(string Part, string Type)[]> _loadTypes = new("--load-type")
    {
        Description = "What a switch switches, as in pitot_heat=resistive: lamp, inductive, resistive or motor; may be given several times. Without it, guessed from names.",
        HelpName = "NAME=TYPE",
        CustomParser = ReadLoadTypes,
    };

    public void AddTo(Command command)
    {
        command.Add(_insulation);
        command.Add(_bundle);
        command.Add(_loadTypes);
    }

    public WiringOptions Read(ParseResult parse) => new()
    {
        Insulation = parse.GetValue(_insulation) switch
        {
            "105" => Insulation.Rated105,
            "200" => Insulation.Rated200,
            _ => Insulation.Rated150,
        },
        Bundling = parse.GetValue(_bundle) is FreeAir ? Bundling.FreeAir : Bundling.InBundle,
        LoadTypes = Named(parse).ToImmutableDictionary(
            named => named.Part,
            named => (LoadType)Array.IndexOf(LoadTypes, named.Type),
            StringComparer.Ordinal),
    };

    /// <summary>Why the options do not fit this scenario; <see langword="null"/> when they do.</summary>
    public string? Refusal(ParseResult parse, Scenario scenario)
    {
        var known = scenario.Feeds.Select(feed => feed.Name).Concat(scenario.Loads.Select(load => load.Name)).ToList();
        var unknown = Named(parse).Select(named => named.Part).FirstOrDefault(part => !known.Contains(part, StringComparer.Ordinal));
        return unknown is null ? null : $"--load-type: there is no feed or load '{unknown}'.{NearestWord.Hint(unknown, known)}";
    }

    private IEnumerable<(string Part, string Type)> Named(ParseResult parse) =>
        (parse.GetValue(_loadTypes) ?? []).GroupBy(named => named.Part, StringComparer.Ordinal).Select(group => group.Last());

    private static (string Part, string Type)[] ReadLoadTypes(ArgumentResult result)
    {
        var read = new List<(string, string)>();
        foreach (var text in result.Tokens.Select(token => token.Value))
        {
            var parts = text.Split('=');
            if (parts.Length == 2 && LoadTypes.Contains(parts[1], StringComparer.Ordinal))
                read.Add((parts[0], parts[1]));
            else
                result.AddError($"--load-type: '{text}' is not understood; expected a name, = and lamp, inductive, resistive or motor, as in pitot_heat=resistive.");
        }

        return [.. read];
    }
}
