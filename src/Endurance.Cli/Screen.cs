using System.Globalization;
using Spectre.Console;

namespace Endurance.Cli;

/// <summary>What the reader of the result looks at.</summary>
/// <param name="Width">Characters in a line.</param>
/// <param name="HasColour">Whether colour and bold may be used.</param>
internal sealed record Screen(int Width, bool HasColour)
{
    /// <summary>Narrower windows would break every word.</summary>
    private const int Narrowest = 40;

    /// <summary>The error stream is a terminal, on which a line may be overwritten.</summary>
    public bool ShowsProgress { get; init; }

    /// <summary>Tables and messages keep to ASCII. What is for programs and files is UTF-8 all the same.</summary>
    public bool IsAscii { get; init; }

    /// <summary>A file, a pipe or a test: always the same width, no colour.</summary>
    public static Screen Plain { get; } = new(Width: 120, HasColour: false);

    /// <summary>Of the process.</summary>
    public static Screen OfProcess() => Of(
        Environment.GetEnvironmentVariable,
        isOutputTerminal: !Console.IsOutputRedirected,
        isErrorTerminal: !Console.IsErrorRedirected,
        Console.IsOutputRedirected ? null : WindowWidth());

    /// <summary>NO_COLOR (no-color.org), a dumb terminal, COLUMNS and a locale without UTF-8 are respected.</summary>
    /// <param name="environment">Value of a variable; <see langword="null"/> when it is not set.</param>
    /// <param name="isOutputTerminal">Whether the result goes to a terminal.</param>
    /// <param name="isErrorTerminal">Whether messages go to a terminal.</param>
    /// <param name="windowWidth">Of that terminal, where it is known.</param>
    public static Screen Of(Func<string, string?> environment, bool isOutputTerminal, bool isErrorTerminal, int? windowWidth)
    {
        var isDumb = environment("TERM") is "dumb";
        var hasColour = isOutputTerminal && !isDumb && string.IsNullOrEmpty(environment("NO_COLOR"));
        var isStated = int.TryParse(environment("COLUMNS"), NumberStyles.None, CultureInfo.InvariantCulture, out var columns) && columns > 0;
        var width = isStated ? columns : windowWidth ?? Plain.Width;
        return new Screen(Math.Max(Narrowest, width), hasColour) { ShowsProgress = isErrorTerminal && !isDumb, IsAscii = !IsUtf8(environment) };
    }

    public IAnsiConsole On(TextWriter output)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = HasColour ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = HasColour ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(output),
        });
        console.Profile.Width = Width;
        console.Profile.Capabilities.Unicode = true;
        return console;
    }

    private static int? WindowWidth()
    {
        try
        {
            return Console.WindowWidth > 0 ? Console.WindowWidth : null;
        }
        catch (IOException)
        {
            return null;
        }
    }

    /// <summary>The first of the variables that is set decides (POSIX.1-2017, section 8.2); where none is, nothing speaks against UTF-8.</summary>
    private static bool IsUtf8(Func<string, string?> environment)
    {
        if (OperatingSystem.IsWindows())
            return true;
        var locale = new[] { "LC_ALL", "LC_CTYPE", "LANG" }.Select(environment).FirstOrDefault(value => !string.IsNullOrEmpty(value));
        return locale is null || locale.Replace("-", "", StringComparison.Ordinal).Contains("utf8", StringComparison.OrdinalIgnoreCase);
    }
}
