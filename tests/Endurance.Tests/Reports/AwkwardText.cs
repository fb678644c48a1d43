using System.Collections.Immutable;

namespace Endurance.Tests.Reports;

/// <summary>Names that formatting, markup, spreadsheets or terminals could take for something else than text.</summary>
internal static class AwkwardText
{
    public static ImmutableArray<string> All { get; } =
    [
        "[red]bus[/]",
        "[[",
        "<script>alert(1)</script>",
        "a & b",
        "\"quoted\", 'twice'",
        "סוללה ראשית",
        "abc\u202Edef",
        "bell\u0007 and \u001b[31mcolour",
        "two\nlines",
        "pipe|star*under_score`tick",
        "Ω µ °C",
        new string('x', 300),
    ];
}
