using System.Globalization;
using Endurance.Fuzz;
using Endurance.Simulation;
using Endurance.Yaml;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
int Number(int at, int otherwise) => args.Length > at ? int.Parse(args[at], NumberStyles.None, CultureInfo.InvariantCulture) : otherwise;
switch (args)
{
    case ["networks", ..]:
        return Campaign.Run("networks", NetworkOracle.Check, Number(1, 2000), Number(2, 0), Console.Out);
    case ["agreement", ..]:
        return Campaign.Run("agreement", NetworkOracle.CheckAgreement, Number(1, 500), Number(2, 0), Console.Out);
    case ["texts", ..]:
        return Campaign.Run("texts", new TextOracle(Shipped()).Check, Number(1, 2000), Number(2, 0), Console.Out);
    case ["text", _]:
        Console.Write(DamagedText.Of(Number(1, 0), Shipped()));
        Console.Error.WriteLine(new TextOracle(Shipped()).Check(Number(1, 0)));
        return 0;
    case ["network", _]:
        var text = NetworkText.Of(Number(1, 0));
        Console.Write(text);
        Console.Error.Write(DiagnosticRenderer.Render(ScenarioReader.ReadText("drawn.yaml", text).Diagnostics));
        Console.Error.WriteLine(NetworkOracle.CheckText(text, isThorough: true));
        return 0;
    case ["check", var file]:
        var given = ScenarioReader.ReadText(file, File.ReadAllText(file)).Scenario ?? throw new InvalidDataException("does not read");
        foreach (var tolerance in (double[])[1e-8, 5e-9, 1e-10])
        {
            Console.WriteLine($"at a tolerance of {tolerance}");
            foreach (var told in NetworkOracle.Run(given, given.FailureCases[0], new SimulationOptions { Tolerance = tolerance })?.Events ?? [])
                Console.WriteLine($"{told.Time.Seconds,14:F3} s  {told.What}");
        }

        Console.Error.WriteLine(NetworkOracle.CheckText(File.ReadAllText(file), isThorough: true));
        return 0;
    case ["shrink", _]:
        Console.Write(Shrinker.Shrink(NetworkText.Of(Number(1, 0)), shorter => NetworkOracle.CheckText(shorter, isThorough: Number(1, 0) % NetworkOracle.Subset == 0)));
        return 0;
    default:
        Console.Error.WriteLine("""
            texts [count [first seed]]      reads damaged texts, and simulates what reads
            text SEED                       prints the text of a seed and what became of it
            networks [count [first seed]]   reads and simulates drawn networks
            agreement [count [first seed]]  the same, each with its parts reversed and at half the tolerance too
            network SEED                    prints the network of a seed and what became of it
            check FILE                      prints the events of a network at three tolerances, and what became of it
            shrink SEED                     prints the smallest network that fails as that of a seed does
            """);
        return 2;
}

// Found upwards from where the program stands, so that it may be started in any folder of the tree.
static string[] Shipped()
{
    var folder = new DirectoryInfo(AppContext.BaseDirectory);
    while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Endurance.sln")))
        folder = folder.Parent;
    var scenarios = Path.Combine(folder?.FullName ?? ".", "scenarios");
    return [.. Directory.GetFiles(scenarios, "*.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllText)];
}
