using Endurance.Reports.Plots;
using SkiaSharp;

namespace Endurance.Tests.Reports;

public sealed class LetteringTests
{
    private const int Labels = 200;
    private const int Rounds = 5;
    private const int Threads = 8;

    private static readonly string[] Names = ["primary_display", "affiliate ffi fl", "AVATAR To. 12.5 V", "Hauptkontaktor für Zündung", "лампа", "סוללה ראשית 12", "بطارية", "電池", "é\u0301 > 240 min…"];

    [Fact]
    public void Draw_ManySheetsSideBySide_HaveTheLettersOfSheetsDrawnOneAfterAnother()
    {
        var expected = Enumerable.Range(0, Labels).Select(Pixels).ToArray();
        var actual = new byte[Labels * Rounds][];

        Parallel.For(0, actual.Length, new ParallelOptions { MaxDegreeOfParallelism = Threads }, i => actual[i] = Pixels(i % Labels));

        Assert.True(expected.Distinct(new SameBytes()).Count() > Labels / 2);
        for (var i = 0; i < actual.Length; i++)
            Assert.True(expected[i % Labels].AsSpan().SequenceEqual(actual[i]), $"label {i % Labels}, round {i / Labels}");
    }

    [Fact]
    public void Plots_DrawnSideBySide_AreThoseDrawnOneAfterAnother()
    {
        var plots = PlotSet.Describe(ReportFixture.Scenario, ReportFixture.Cases).Select(described => described.Plot).ToArray();
        var expected = plots.Select(plot => (Png: PlotRenderer.Png(plot), Svg: PlotRenderer.Svg(plot))).ToArray();
        var actual = new (byte[] Png, byte[] Svg)[plots.Length * 3];

        Parallel.For(0, actual.Length, new ParallelOptions { MaxDegreeOfParallelism = Threads }, i => actual[i] = (PlotRenderer.Png(plots[i % plots.Length]), PlotRenderer.Svg(plots[i % plots.Length])));

        for (var i = 0; i < actual.Length; i++)
        {
            Assert.Equal(expected[i % plots.Length].Png, actual[i].Png);
            Assert.Equal(expected[i % plots.Length].Svg, actual[i].Svg);
        }
    }

    [Fact]
    public void WidthOf_LetterPairs_IsThatOfTheLettersAsSet()
    {
        using var letters = Lettering.Regular(100);

        // Kerning draws A and V together; the width of a text is what its last letter ends at.
        Assert.True(letters.WidthOf("AV") < letters.WidthOf("A") + letters.WidthOf("V") - 1);
        Assert.Equal(letters.WidthOf("AVAV"), (2 * letters.WidthOf("AV")) - (letters.WidthOf("V") + letters.WidthOf("A") - letters.WidthOf("VA")), 0.5f);
    }

    private static byte[] Pixels(int label)
    {
        using var surface = SKSurface.Create(new SKImageInfo(300, 40));
        using var letters = label % 2 is 0 ? Lettering.Regular(9 + (label % 7)) : Lettering.Bold(9 + (label % 5));
        letters.Draw(surface.Canvas, $"{Names[label % Names.Length]} {label}", 4, 24, hasHalo: label % 3 is 0);
        using var pixels = surface.PeekPixels();
        return pixels.GetPixelSpan().ToArray();
    }

    private sealed class SameBytes : IEqualityComparer<byte[]>
    {
        public bool Equals(byte[]? x, byte[]? y) => x.AsSpan().SequenceEqual(y);

        public int GetHashCode(byte[] obj) => obj.Length;
    }
}
