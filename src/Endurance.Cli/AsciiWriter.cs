using System.Text;
using Endurance.Reports;

namespace Endurance.Cli;

/// <summary>Messages for a terminal that shows ASCII alone.</summary>
internal sealed class AsciiWriter(TextWriter inner) : TextWriter(inner.FormatProvider)
{
    public override Encoding Encoding => inner.Encoding;

    public override void Write(char value) => inner.Write(AsciiText.Of(value.ToString()));

    public override void Write(string? value) => inner.Write(value is null ? null : AsciiText.Of(value));

    public override void WriteLine(string? value)
    {
        Write(value);
        inner.WriteLine();
    }

    public override void Flush() => inner.Flush();
}
