using HarfBuzzSharp;
using SkiaSharp;
using SkiaSharp.HarfBuzz;

namespace Endurance.Reports.Plots;

/// <summary>Chooses the letters of a font for a text and sets them side by side. One belongs to one drawing; what drawings share is the face, which cannot change.</summary>
internal sealed class LetterShaper(Face face, float size) : IDisposable
{
    /// <summary>In which positions are counted, in the height of the letters.</summary>
    private const int Units = 512;

    private readonly Font _font = FontOf(face);
    private readonly HarfBuzzSharp.Buffer _buffer = new();

    /// <summary>The tables of a font file, marked as never to change: on that condition HarfBuzz lets threads share them.</summary>
    public static Face FaceOf(SKTypeface typeface)
    {
        using var blob = typeface.OpenStream(out var index).ToHarfBuzzBlob();
        var face = new Face(blob, index) { UnitsPerEm = typeface.UnitsPerEm };
        face.MakeImmutable();
        return face;
    }

    public void Dispose()
    {
        _buffer.Dispose();
        _font.Dispose();
    }

    /// <summary>Sets a run of one direction behind what was set before.</summary>
    /// <param name="run">Not empty.</param>
    /// <param name="start">Pixels to the left of it.</param>
    /// <param name="glyphs">Takes the letters; <see langword="null"/> to measure alone.</param>
    /// <returns>Pixels to the right end of it.</returns>
    public float Set(string run, float start, List<PlacedGlyph>? glyphs)
    {
        _buffer.ClearContents();
        _buffer.AddUtf16(run);
        _buffer.GuessSegmentProperties();
        _font.Shape(_buffer);
        var pixels = size / Units;
        var letters = _buffer.GetGlyphInfoSpan();
        var places = _buffer.GetGlyphPositionSpan();
        var x = 0f;
        for (var i = 0; i < letters.Length; i++)
        {
            glyphs?.Add(new PlacedGlyph((ushort)letters[i].Codepoint, start + x + (places[i].XOffset * pixels), -places[i].YOffset * pixels));
            x += places[i].XAdvance * pixels;
        }

        return start + x;
    }

    private static Font FontOf(Face face)
    {
        var font = new Font(face);
        font.SetScale(Units, Units);
        font.SetFunctionsOpenType();
        return font;
    }
}
