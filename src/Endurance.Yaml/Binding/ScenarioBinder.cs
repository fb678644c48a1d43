using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds a document to a scenario and checks it; legal placeholders stand where a value could not be read.</summary>
internal static class ScenarioBinder
{
    private static readonly Temperature DefaultAmbient = Temperature.FromCelsius(25);
    private static readonly Duration DefaultHorizon = Duration.FromHours(4);

    /// <summary>The scenario, to be used only when no diagnostic is an error.</summary>
    public static Scenario Bind(ScenarioDocument document, DiagnosticList diagnostics)
    {
        var reading = new Reading(document, diagnostics);
        var top = new MappingReader(reading, document.Root, ScenarioKeys.Scenario, "the scenario", document.Root.Entries.IsEmpty ? document.Root.Span : document.Root.Entries[0].Key.Span);
        CheckVersion(top);
        var system = System(top);
        if (!top.Has("ambient"))
            reading.Assume("scenario", "ambient temperature 25 degC");
        if (!top.Has("horizon"))
            reading.Assume("scenario", "simulated for 4 h");
        var ambient = top.Temperature("ambient") ?? DefaultAmbient;
        var diodes = new NamedDiodes(top);
        var loads = new LoadBinder(diodes, ambient).Bind(top);
        var groups = new LoadGroups(loads);
        var scenario = new Scenario
        {
            Title = top.Text("title") ?? document.Source.Name,
            System = system,
            Ambient = ambient,
            Horizon = top.Quantity("horizon") is { } seconds ? Duration.FromSeconds(seconds) : DefaultHorizon,
            Buses = SourceBinder.Buses(top),
            Batteries = new BatteryBinder(system, ambient, loads).Bind(top),
            Alternators = SourceBinder.Alternators(top),
            Feeds = FeedBinder.Bind(top, diodes, ambient),
            Loads = loads,
            Chargers = ChargerBinder.Bind(top),
            Grounds = GroundBinder.Bind(top),
            Selectors = SelectorBinder.Bind(top),
            Warnings = WarningBinder.Bind(top),
            Landing = LandingBinder.Bind(top, groups),
            FailureCases = new CaseBinder(groups).Bind(top),
            Requirements = new RequirementBinder(groups).Bind(top),
        };
        scenario = scenario with { Tolerances = ToleranceBinder.Bind(top, scenario), BatteriesOnOffer = OfferBinder.Bind(top) };
        LayoutBinder.Check(top);
        AssumeShorts(scenario, reading);
        AssumeIdle(scenario, reading);
        RuleReports.Report(ScenarioRules.Check(scenario, diodes.Names), document, diagnostics);
        return scenario with { Assumptions = [.. reading.Assumptions] };
    }

    private static void CheckVersion(MappingReader top)
    {
        if (top.Text("endurance") is { } version && version is not "1")
            top.Error("unknown-version", "endurance", $"this is format version {Quoted.Of(version)}, and this program reads version 1 alone", "endurance: 1, or the program that wrote the file");
    }

    private static SystemVoltage System(MappingReader top)
    {
        if (top.Text("system") is not { } text)
            return SystemVoltage.Volts14;
        switch (text.Replace(" ", "", StringComparison.Ordinal))
        {
            case "14V":
                return SystemVoltage.Volts14;
            case "28V":
                return SystemVoltage.Volts28;
            case var other:
                var nearest = other.TrimEnd('v', 'V') switch { "14" or "12" => "14 V", "28" or "24" => "28 V", _ => null };
                top.Error("unknown-system", "system", $"{Quoted.Of(text)} is not a system voltage", "14 V (with 12 V batteries) or 28 V (with 24 V batteries)", nearest);
                return SystemVoltage.Volts14;
        }
    }

    /// <summary>The resistance of a shorted diode matters only where a case shorts one.</summary>
    private static void AssumeShorts(Scenario scenario, Reading reading)
    {
        var shorted = scenario.FailureCases.SelectMany(failure => failure.Timeline).SelectMany(step => step.Actions)
            .Where(action => action.Verb == ActionVerb.Short).Select(action => action.Target).ToHashSet(StringComparer.Ordinal);
        foreach (var feed in scenario.Feeds.Where(feed => shorted.Contains(feed.Name) && feed.Diode is not null))
        {
            var path = feed.DiodeName is { } named ? (Node(reading, "diodes", named) as MappingNode) : ((Node(reading, "feeds", feed.Name) as MappingNode)?.Find("diode")?.Value as MappingNode);
            if (path?.Find("short_resistance") is null)
                reading.Assume(feed.Name, "1 mohm through its diode once it has failed short", Origin.Default);
        }
    }

    /// <summary>The limit at idle matters only where a case idles the engine.</summary>
    private static void AssumeIdle(Scenario scenario, Reading reading)
    {
        var idled = scenario.FailureCases.SelectMany(failure => failure.Timeline).SelectMany(step => step.Actions)
            .Where(action => action.Verb == ActionVerb.Idle).Select(action => action.Target).ToHashSet(StringComparer.Ordinal);
        foreach (var alternator in scenario.Alternators.Where(alternator => alternator.LimitIdle is null && idled.Contains(alternator.DrivenBy ?? "")))
            reading.Assume(alternator.Name, "gives as much at idle as at cruise: no limit_idle");
    }

    private static DocumentNode? Node(Reading reading, string section, string name) => (reading.Document.Root.Find(section)?.Value as MappingNode)?.Find(name)?.Value;
}
