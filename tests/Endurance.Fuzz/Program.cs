using System.Globalization;
using Endurance.Fuzz;
using Endurance.Yaml;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
int Number(int at, int otherwise) => args.Length > at ? int.Parse(args[at], NumberStyles.None, CultureInfo.InvariantCulture) : otherwise;
switch (args)
{
    case ["networks", ..]:
        return Campaign.Run("networks", NetworkOracle.Check, Number(1, 2000), Number(2, 0), Console.Out);
    case ["network", _]:
        var text = NetworkText.Of(Number(1, 0));
        Console.Write(text);
        Console.Error.Write(DiagnosticRenderer.Render(ScenarioReader.ReadText("drawn.yaml", text).Diagnostics));
        Console.Error.WriteLine(NetworkOracle.CheckText(text, isThorough: true));
        return 0;
    case ["shrink", _]:
        Console.Write(Shrinker.Shrink(NetworkText.Of(Number(1, 0)), shorter => NetworkOracle.CheckText(shorter, isThorough: Number(1, 0) % NetworkOracle.Subset == 0)));
        return 0;
    default:
        Console.Error.WriteLine("""
            networks [count [first seed]]   reads and simulates drawn networks
            network SEED                    prints the network of a seed and what became of it
            shrink SEED                     prints the smallest network that fails as that of a seed does
            """);
        return 2;
}
