using Spectre.Console;

namespace Endurance.Reports;

/// <summary>A report for a terminal, or plain text where the console given has neither colour nor cursor.</summary>
public static class TerminalReport
{
    /// <summary>Colour, width and character set are the console's; what was typed by a person is never read as markup.</summary>
    public static void Write(IAnsiConsole console, ReportDocument document) => console.Write(new TerminalPage(document));
}
