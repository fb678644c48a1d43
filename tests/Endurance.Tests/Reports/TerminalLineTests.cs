using System.Text;
using Endurance.Reports;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace Endurance.Tests.Reports;

public sealed class TerminalLineTests
{
    private const int Seed = 20261125;

    private static readonly IAnsiConsole Console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No, Out = new AnsiConsoleOutput(TextWriter.Null) });
    private static readonly RenderOptions Options = RenderOptions.Create(Console, Console.Profile.Capabilities);

    /// <summary>The lines that are broken without looking up widths are those that the console would break, blanks at their ends included.</summary>
    [Fact]
    public void Of_ManyTextsAndWidths_BreaksAsTheConsoleDoes()
    {
        var random = new Random(Seed);
        for (var i = 0; i < 2_000; i++)
        {
            var text = Words(random);
            var width = random.Next(2, 30);
            IRenderable console = new Text(text);

            var lines = TerminalLine.Of(text, Style.Plain, Options, width);

            var expected = Segment.SplitLines(console.Render(Options, width));
            Assert.Equal(expected.Select(TextOf), lines.Select(line => TextOf(line.Segments)));
            Assert.Equal(expected.Select(line => line.CellCount()), lines.Select(line => line.Width));
        }
    }

    [Fact]
    public void Of_Ideographs_CountTwoColumnsEach()
    {
        var lines = TerminalLine.Of("電池 main", Style.Plain, Options, 6);

        Assert.Equal(["電池 ", "main"], lines.Select(line => TextOf(line.Segments)));
        Assert.Equal([5, 4], lines.Select(line => line.Width));
    }

    [Fact]
    public void Grid_CellsOfSeveralLinesAndIdeographs_KeepTheColumnsStraight()
    {
        var page = new List<Segment>();
        var grid = new TerminalGrid(page, [6, 5], [false, true]);

        grid.AddRow([Cell("電池 main", 6), Cell("12.5", 5)]);
        grid.AddRow([Cell("bus", 6), Cell("one two", 5)]);
        grid.AddRule('-');

        string[] expected = [" 電池     12.5  ", " main           ", " bus      one   ", "           two  ", "----------------", ""];
        Assert.Equal(string.Join(Environment.NewLine, expected), TextOf(page));
    }

    private static IReadOnlyList<TerminalLine> Cell(string text, int width) => TerminalLine.Of(text, Style.Plain, Options, width);

    private static string TextOf(IEnumerable<Segment> segments) => string.Concat(segments.Select(segment => segment.Text));

    private static string Words(Random random)
    {
        var text = new StringBuilder();
        for (var i = random.Next(12); i >= 0; i--)
        {
            text.Append(random.Next(20) is 0 ? "é電" : new string('x', random.Next(1, random.Next(10) is 0 ? 40 : 9)));
            text.Append(' ', random.Next(8) is 0 ? random.Next(4) : 1);
        }

        return random.Next(4) is 0 ? $" {text}" : random.Next(3) is 0 ? text.ToString() : text.ToString().TrimEnd();
    }
}
