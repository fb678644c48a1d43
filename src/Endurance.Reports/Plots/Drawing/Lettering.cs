using System.Reflection;
using HarfBuzzSharp;
using SkiaSharp;

namespace Endurance.Reports.Plots;

/// <summary>Text drawn as outlines of an embedded font, so that a picture looks the same with no fonts installed, and in any SVG viewer.</summary>
internal sealed class Lettering : IDisposable
{
    public const float HaloWidth = 4;

    private static readonly SKTypeface RegularFace = Load("Fonts.DejaVuSans.ttf");
    private static readonly SKTypeface BoldFace = Load("Fonts.DejaVuSans-Bold.ttf");
    private static readonly Face RegularLetters = LetterShaper.FaceOf(RegularFace);
    private static readonly Face BoldLetters = LetterShaper.FaceOf(BoldFace);

    private readonly SKFont _font;
    private readonly LetterShaper _shaper;

    private Lettering(string name, SKTypeface face, Face letters, float size)
    {
        Name = name + RoundedNumber.Short(size, 1);
        _font = new SKFont(face, size) { Hinting = SKFontHinting.None, Subpixel = true };
        _shaper = new LetterShaper(letters, size);
    }

    /// <summary>Letters, digits and a dot; tells face and size.</summary>
    public string Name { get; }

    public static Lettering Regular(float size) => new("r", RegularFace, RegularLetters, size);

    public static Lettering Bold(float size) => new("b", BoldFace, BoldLetters, size);

    public void Dispose()
    {
        _shaper.Dispose();
        _font.Dispose();
    }

    public float WidthOf(string text) => TextRuns.Of(text).Aggregate(0f, (width, run) => _shaper.Set(run, width, glyphs: null));

    /// <summary>Draws one line on its baseline.</summary>
    /// <param name="canvas">Drawn on.</param>
    /// <param name="text">No line ends.</param>
    /// <param name="x">Anchor.</param>
    /// <param name="y">Baseline.</param>
    /// <param name="anchor">0: the text starts at x; 0.5: is centred on it; 1: ends there.</param>
    /// <param name="hasHalo">A white edge keeps it readable on lines.</param>
    public void Draw(SKCanvas canvas, string text, float x, float y, float anchor = 0, bool hasHalo = false)
    {
        var (glyphs, width) = Set(text);
        var start = new SKPoint(x - (width * anchor), y);
        if (canvas is SvgSheet sheet)
            sheet.Add(this, glyphs, start, hasHalo);
        else
            DrawOutlines(canvas, glyphs, start, hasHalo);
    }

    /// <summary>Of one letter that stands at zero, to be disposed of; <see langword="null"/> where there is none.</summary>
    public SKPath? Outline(ushort glyph) => _font.GetGlyphPath(glyph);

    /// <summary>Breaks a text into lines no wider than so many pixels; a word that is too wide is broken anywhere.</summary>
    public IReadOnlyList<string> Wrap(string text, float width)
    {
        var lines = new List<string>();
        var (line, taken) = ("", 0f);
        var blank = WidthOf(" ");
        foreach (var word in text.Split(' ').SelectMany(word => Pieces(word, width)))
        {
            var needed = WidthOf(word);
            if (line.Length > 0 && taken + blank + needed <= width)
            {
                (line, taken) = ($"{line} {word}", taken + blank + needed);
                continue;
            }

            if (line.Length > 0)
                lines.Add(line);
            (line, taken) = (word, needed);
        }

        lines.Add(line);
        return lines;
    }

    private IEnumerable<string> Pieces(string word, float width)
    {
        while (WidthOf(word) > width)
        {
            var length = word.Length - 1;
            while (length > 1 && WidthOf(word[..length]) > width)
                length--;
            if (char.IsHighSurrogate(word[length - 1]))
                length++;
            yield return word[..length];
            word = word[length..];
        }

        yield return word;
    }

    private (List<PlacedGlyph> Glyphs, float Width) Set(string text)
    {
        var width = 0f;
        var glyphs = new List<PlacedGlyph>(text.Length);
        foreach (var run in TextRuns.Of(text))
            width = _shaper.Set(run, width, glyphs);
        return (glyphs, width);
    }

    private void DrawOutlines(SKCanvas canvas, List<PlacedGlyph> glyphs, SKPoint start, bool hasHalo)
    {
        using var path = new SKPath();
        foreach (var placed in glyphs)
        {
            using var outline = Outline(placed.Glyph);
            if (outline is not null)
                path.AddPath(outline, placed.X, placed.Y);
        }

        path.Offset(start.X, start.Y);
        if (hasHalo)
        {
            using var halo = new SKPaint { Color = SKColors.White, IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeWidth = HaloWidth, StrokeJoin = SKStrokeJoin.Round };
            canvas.DrawPath(path, halo);
        }

        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true };
        canvas.DrawPath(path, ink);
    }

    private static SKTypeface Load(string resource)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(resource)
            ?? throw new InvalidOperationException($"The program was built without {resource}.");
        using var data = SKData.Create(stream);
        return SKTypeface.FromData(data);
    }
}
