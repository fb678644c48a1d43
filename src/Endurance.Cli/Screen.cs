using Spectre.Console;

namespace Endurance.Cli;

/// <summary>What the reader of the result looks at.</summary>
/// <param name="Width">Characters in a line.</param>
/// <param name="HasColour">Whether colour and bold may be used.</param>
internal sealed record Screen(int Width, bool HasColour)
{
    /// <summary>Narrower windows would break every word of a table.</summary>
    private const int Narrowest = 60;

    /// <summary>The error stream is a terminal, on which a line may be overwritten.</summary>
    public bool ShowsProgress { get; init; }

    /// <summary>A file, a pipe or a test: always the same width, no colour.</summary>
    public static Screen Plain { get; } = new(Width: 120, HasColour: false);

    /// <summary>Of the process; NO_COLOR (no-color.org) and a dumb terminal are respected.</summary>
    public static Screen OfProcess()
    {
        var showsProgress = !Console.IsErrorRedirected;
        if (Console.IsOutputRedirected)
            return Plain with { ShowsProgress = showsProgress };

        var isDumb = string.Equals(Environment.GetEnvironmentVariable("TERM"), "dumb", StringComparison.Ordinal);
        var isPlain = isDumb || !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));
        return new Screen(Math.Max(Narrowest, WindowWidth()), !isPlain) { ShowsProgress = showsProgress };
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

    private static int WindowWidth()
    {
        try
        {
            return Console.WindowWidth;
        }
        catch (IOException)
        {
            return Plain.Width;
        }
    }
}
