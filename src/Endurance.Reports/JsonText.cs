using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Simulation;

namespace Endurance.Reports;

/// <summary>What the answers for programs have in common.</summary>
internal static class JsonText
{
    private const int MinuteDecimals = 4;

    /// <summary>One object, indented, that ends with a line feed.</summary>
    public static string Write(Action<Utf8JsonWriter> writeMembers)
    {
        using var stream = new MemoryStream();
        var options = new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };
        using (var json = new Utf8JsonWriter(stream, options))
        {
            json.WriteStartObject();
            writeMembers(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }

    /// <summary>An array of objects.</summary>
    public static void WriteArray<T>(Utf8JsonWriter json, string key, ImmutableArray<T> items, Action<Utf8JsonWriter, T> writeMembers)
    {
        json.WriteStartArray(key);
        foreach (var item in items)
        {
            json.WriteStartObject();
            writeMembers(json, item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Minutes, or <c>null</c>.</summary>
    public static void Minutes(Utf8JsonWriter json, string key, Duration? time) => Number(json, key, time?.Minutes, MinuteDecimals);

    /// <summary>Which parts kept a case from being computed to its end, and when; no key at all where it was. Of every cause: the finding says which.</summary>
    public static void WriteBreakOff(Utf8JsonWriter json, BreakOff? breakOff)
    {
        if (breakOff is null)
            return;
        json.WriteStartObject("chattering");
        WriteBreakOffMembers(json, breakOff);
        json.WriteEndObject();
    }

    public static void WriteBreakOffMembers(Utf8JsonWriter json, BreakOff breakOff)
    {
        json.WriteStartArray("parts");
        foreach (var part in breakOff.Parts)
            json.WriteStringValue(part);
        json.WriteEndArray();
        Minutes(json, "minutes", breakOff.Time);
    }

    public static void WriteFinding(Utf8JsonWriter json, Finding finding)
    {
        json.WriteString("code", finding.Code);
        json.WriteString("severity", Wording.Of(finding.Severity));
        json.WriteString("part", finding.Part);
        json.WriteString("value", finding.Value);
        json.WriteString("message", finding.Message);
    }

    /// <summary>A number of so many decimals, or <c>null</c>.</summary>
    public static void Number(Utf8JsonWriter json, string key, double? value, int decimals)
    {
        json.WritePropertyName(key);
        if (value is { } number)
            json.WriteRawValue(RoundedNumber.Short(number, decimals), skipInputValidation: true);
        else
            json.WriteNullValue();
    }
}
