using System.Text;
using SkiaSharp;

namespace Endurance.Reports.Plots;

/// <summary>A canvas that passes on what is drawn, but keeps text apart: in SVG the outline of a letter need be written only once.</summary>
internal sealed class SvgSheet : SKNWayCanvas
{
    private readonly StringBuilder _outlines = new();
    private readonly StringBuilder _uses = new();

    /// <summary>Whether a letter has an outline; a space has none.</summary>
    private readonly Dictionary<(string Lettering, ushort Glyph), bool> _outlined = [];

    public SvgSheet(SKCanvas shapes, int width, int height)
        : base(width, height) => AddCanvas(shapes);

    /// <summary>The text as elements of SVG, to follow the shapes.</summary>
    public string Text => $"<defs>\n{_outlines}</defs>\n{_uses}";

    /// <summary>Places text as the canvas is turned and moved just now.</summary>
    public void Add(Lettering lettering, IReadOnlyList<PlacedGlyph> glyphs, SKPoint start, bool hasHalo)
    {
        var inked = glyphs.Where(placed => IsOutlined(lettering, placed.Glyph)).ToList();
        if (inked.Count == 0)
            return;
        var place = TotalMatrix.PreConcat(SKMatrix.CreateTranslation(start.X, start.Y));
        _uses.Append("<g transform=\"matrix(").AppendJoin(' ', ((float[])[place.ScaleX, place.SkewY, place.SkewX, place.ScaleY, place.TransX, place.TransY]).Select(Number)).Append(")\">");
        if (hasHalo)
        {
            _uses.Append("<g stroke=\"#fff\" stroke-width=\"").Append(Number(Lettering.HaloWidth)).Append("\" stroke-linejoin=\"round\">");
            Use(lettering, inked);
            _uses.Append("</g>");
        }

        Use(lettering, inked);
        _uses.Append("</g>\n");
    }

    private bool IsOutlined(Lettering lettering, ushort glyph)
    {
        if (_outlined.TryGetValue((lettering.Name, glyph), out var isOutlined))
            return isOutlined;
        using var outline = lettering.Outline(glyph);
        isOutlined = outline is { IsEmpty: false };
        if (isOutlined)
            _outlines.Append("<path id=\"").Append(lettering.Name).Append('-').Append(glyph).Append("\" d=\"").Append(SvgNumbers.Rounded(outline!.ToSvgPathData())).Append("\"/>\n");
        _outlined.Add((lettering.Name, glyph), isOutlined);
        return isOutlined;
    }

    private void Use(Lettering lettering, List<PlacedGlyph> glyphs)
    {
        foreach (var placed in glyphs)
        {
            _uses.Append("<use xlink:href=\"#").Append(lettering.Name).Append('-').Append(placed.Glyph).Append("\" x=\"").Append(Number(placed.X));
            if (MathF.Abs(placed.Y) > 0)
                _uses.Append("\" y=\"").Append(Number(placed.Y));
            _uses.Append("\"/>");
        }
    }

    private static string Number(float value) => RoundedNumber.Short(value, 2);
}
