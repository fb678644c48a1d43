using System.Collections.Immutable;
using System.Globalization;
using Endurance.Findings;
using Endurance.Reports;
using Endurance.Scenarios;
using Endurance.Studies.GroundTest;
using Endurance.Studies.Reconciliation;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;

namespace Endurance.Cli.Logs;

/// <summary>Reads the rows of one filled card against the plan it was written from.</summary>
internal sealed class CardRows(GroundTestPlan plan, CardColumns columns, DiagnosticList diagnostics)
{
    /// <summary>Half of the last digit of a prediction on the card.</summary>
    private const double HalfDigit = 0.005 + 1e-9;

    private readonly Dictionary<(int Point, ExpectedReading Reading), (MeasuredReading Measured, int Line)> _measured = [];
    private readonly HashSet<string> _reported = new(StringComparer.Ordinal);
    private (SourceSpan Place, string Text)? _firstOther;
    private readonly SortedSet<int> _others = [];

    /// <summary>In the order of the plan.</summary>
    public ImmutableArray<MeasuredReading> Measured =>
        [.. _measured.Values.Select(entry => entry.Measured).OrderBy(reading => reading.Point).ThenBy(reading => reading.Kind).ThenBy(reading => reading.Part, StringComparer.Ordinal)];

    public void Read(string[] cells, LogLine line)
    {
        string At(int column) => column >= 0 && column < cells.Length ? cells[column] : "";
        if (IsSplitNumber(At(columns.Measured), At(columns.Remarks)) && line.Separator == ',')
            diagnostics.Error("decimal-comma", line.Cell(columns.Measured), $"{Quoted.Of($"{At(columns.Measured)},{At(columns.Remarks)}")} looks like a decimal comma between commas that part the cells", "a decimal point, quotation marks around the number, or words in the remarks");
        if (Point(At(columns.Point), line) is not { } point || !HasTitle(point, At(columns.Title), line) || Reading(point, At(columns.Quantity), line) is not { } reading)
            return;
        NoteOther(point, reading, At(columns.Predicted), line);
        var date = Date(At(columns.Date), line);
        if (At(columns.Measured) is not { Length: > 0 } text)
            return;
        var number = CardNumber.Read(text, At(columns.Unit), reading.Kind);
        if (number.Fault is { } fault)
            diagnostics.Error(fault.Code, line.Cell(columns.Measured), fault.Message, fault.Expected, fault.Nearest);
        else
            Add(new MeasuredReading(point.Number, reading.Kind, reading.Part, number.Value!.Value, date), reading, text, line);
    }

    /// <summary>One word on a card that was predicted from something else.</summary>
    public void Finish()
    {
        if (_firstOther is not { } first)
            return;
        var more = _others.Count > 1 ? $", and {_others.Count - 1} more points have other predictions" : "";
        diagnostics.Add(Severity.Warning, "card-differs", first.Place, first.Text + more, "a card of this scenario and its overlays; the readings are held against what is predicted now");
    }

    private TestPoint? Point(string text, LogLine line)
    {
        var digits = text.Length > 0 && text[0] is 'T' or 't' ? text[1..] : text;
        var known = int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? plan.Points.FirstOrDefault(point => point.Number == number) : null;
        if (known is null && _reported.Add(text))
        {
            diagnostics.Error(
                "unknown-point", line.Cell(columns.Point), text.Length == 0 ? "this row names no point" : $"the ground test of this scenario has no point {Quoted.Of(text)}",
                $"{TestCardCsv.Label(plan.Points[0])} to {TestCardCsv.Label(plan.Points[^1])}; write the card anew with `endurance testcard` if the scenario has changed since",
                NearestName.Find(text, plan.Points.Select(TestCardCsv.Label)));
        }

        return known;
    }

    private bool HasTitle(TestPoint point, string title, LogLine line)
    {
        if (title.Length == 0 || string.Equals(title, point.Title.Trim(), StringComparison.Ordinal))
            return true;
        var label = TestCardCsv.Label(point);
        if (!_reported.Add($"{label} {title}"))
            return false;
        var moved = plan.Points.FirstOrDefault(other => string.Equals(other.Title, title, StringComparison.Ordinal));
        diagnostics.Error(
            "unknown-point", line.Cell(columns.Title), $"{label} is {Quoted.Of(title)} on the card and {Quoted.Of(point.Title)} in the scenario",
            "a card that `endurance testcard` writes for this scenario", moved is null ? null : TestCardCsv.Label(moved));
        return false;
    }

    private ExpectedReading? Reading(TestPoint point, string text, LogLine line)
    {
        var names = point.Readings.Select(TestCardCsv.Quantity).ToList();
        var index = names.FindIndex(name => string.Equals(name, text, StringComparison.Ordinal));
        if (index >= 0)
            return point.Readings[index];
        diagnostics.Error(
            "unknown-reading", line.Cell(columns.Quantity), text.Length == 0 ? $"this row of {TestCardCsv.Label(point)} names no quantity" : $"{TestCardCsv.Label(point)} has no reading {Quoted.Of(text)}",
            $"one of {string.Join(", ", names)}", NearestName.Find(text, names));
        return null;
    }

    private void NoteOther(TestPoint point, ExpectedReading reading, string predicted, LogLine line)
    {
        if (predicted.Length == 0 || CardNumber.Read(predicted, "", reading.Kind).Value is not { } printed || Math.Abs(printed - reading.Predicted) <= HalfDigit)
            return;
        _others.Add(point.Number);
        _firstOther ??= (line.Cell(columns.Predicted), FormattableString.Invariant($"{TestCardCsv.Label(point)} predicts {printed:0.00} {reading.Unit} for {TestCardCsv.Quantity(reading)} on the card, and {reading.Predicted:0.00} {reading.Unit} now"));
    }

    private DateOnly? Date(string text, LogLine line)
    {
        if (text.Length == 0)
            return null;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            return day;
        diagnostics.Error("not-a-date", line.Cell(columns.Date), $"{Quoted.Of(text)} is not a date", "year, month and day, such as 2026-05-02, or an empty cell");
        return null;
    }

    /// <summary>A reading that stands twice has to stand twice alike.</summary>
    private void Add(MeasuredReading measured, ExpectedReading reading, string text, LogLine line)
    {
        var key = (measured.Point, reading);
        if (!_measured.TryGetValue(key, out var earlier))
            _measured.Add(key, (measured, line.Number));
        else if (!earlier.Measured.Value.Equals(measured.Value))
            diagnostics.Error("measured-twice", line.Cell(columns.Measured), $"{Quoted.Of(text)} is a second reading of {TestCardCsv.Quantity(reading)} at T{measured.Point}, which line {earlier.Line} has otherwise", "one reading; delete the other, or leave its cell empty");
        else if (earlier.Measured.Date is null)
            _measured[key] = (measured, line.Number);
    }

    private static bool IsSplitNumber(string measured, string remarks) =>
        measured.Length > 0 && remarks.Length > 0 && measured.TrimStart('-').All(char.IsAsciiDigit) && remarks.TrimEnd('V', 'A', ' ').All(char.IsAsciiDigit);
}
