using System.Collections.Immutable;
using System.CommandLine;
using Endurance.Reports;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;

namespace Endurance.Cli.Commands;

/// <summary>The forms in which a result goes to standard output.</summary>
internal static class ResultFormat
{
    public const string Table = "table";
    public const string Json = "json";
    public const string Csv = "csv";
    public const string Markdown = "markdown";

    public static string[] All => [Table, Json, Csv, Markdown];

    /// <summary>The option that names one of them.</summary>
    public static Option<string> Option() => SharedOptions.Format(All);

    /// <summary>Quiet is the first table alone, where the form is for people.</summary>
    public static void Write(
        string format, Scenario scenario, ImmutableArray<CaseResult> cases, bool isQuiet, Screen screen, TextWriter output) => Write(
            format,
            () => FailureCaseJson.Write(scenario.Title, cases),
            () => FailureCaseCsv.Write(scenario, cases),
            () => isQuiet ? FailureCaseReport.DescribeQuiet(scenario, cases) : FailureCaseReport.Describe(scenario, cases),
            screen,
            output);

    /// <summary>The form asked for, and no other, is made.</summary>
    public static void Write(
        string format, Func<string> json, Func<string> csv, Func<ReportDocument> document, Screen screen, TextWriter output)
    {
        switch (format)
        {
            case Json:
                output.Write(json());
                break;
            case Csv:
                output.Write(csv());
                break;
            default:
                Write(format, document(), screen, output);
                break;
        }
    }

    /// <summary>A document for people, as <see cref="Table"/> or <see cref="Markdown"/>.</summary>
    public static void Write(string format, ReportDocument document, Screen screen, TextWriter output)
    {
        if (string.Equals(format, Markdown, StringComparison.Ordinal))
            output.Write(MarkdownReport.Write(document));
        else
            WriteTable(document, screen, output);
    }

    /// <summary>Tables are padded to their full width, which is of no use in a file or a pipe.</summary>
    private static void WriteTable(ReportDocument document, Screen screen, TextWriter output)
    {
        using var padded = new StringWriter { NewLine = "\n" };
        TerminalReport.Write(screen.On(padded), screen.IsAscii ? AsciiText.Of(document) : document);
        var text = screen.IsAscii ? AsciiText.Of(padded.ToString()) : padded.ToString();
        foreach (var line in text.TrimEnd().Split('\n'))
            output.WriteLine(line.TrimEnd());
    }
}
