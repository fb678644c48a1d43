using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.Sizing;

namespace Endurance.Reports.Plots;

/// <summary>Minutes over what is sized, with what is required.</summary>
public static class SizingPlot
{
    /// <summary>What lies further from the answer and from today's value than this factor tells nothing.</summary>
    private const double Around = 6;

    /// <param name="scenario">The scenario that was sized.</param>
    /// <param name="answer">What was found.</param>
    public static PlotDescription Describe(Scenario scenario, SizingAnswer answer)
    {
        var terms = SizingTerms.Of(answer.Question.Find);
        var isLogarithmic = answer.Question.Find is SizingFind.Capacity or SizingFind.Load;
        double At(double si) => isLogarithmic ? Math.Log10(terms.InUnit(si)) : terms.InUnit(si);
        var shown = Shown(answer, isLogarithmic);
        var required = scenario.Requirements.Select(requirement => requirement.Endure).Distinct().Order().ToImmutableArray();
        var (low, high) = (terms.InUnit(shown[0].Value), terms.InUnit(shown[^1].Value));
        var x = isLogarithmic
            ? AxisScale.Logarithmic(terms.Quantity, terms.Unit, low, high)
            : AxisScale.Round(terms.Quantity, terms.Unit, low, high);
        var series = required.Select((time, style) => Curve(scenario, shown, time, style, At)).Where(line => line.Points.Length > 1).ToImmutableArray();
        return new PlotDescription
        {
            Title = Title(terms, answer),
            Subject = VisibleText.Shortened(scenario.Title, 40),
            Panels =
            [
                new PlotPanel
                {
                    X = x,
                    Y = AxisScale.Round("endurance", "min", 0, series.SelectMany(line => line.Points).Select(point => point.Y).Concat(required.Select(time => time.Minutes)).Max() * 1.05),
                    Series = series,
                    Lines =
                    [
                        .. required.Select(time => new ReferenceLine(ReferenceLineKind.LevelRequirement, time.Minutes, $"required {CellText.RoundMinutes(time)} min")),
                        .. answer.Question.Find is SizingFind.Capacity or SizingFind.Health
                            ? (ImmutableArray<ReferenceLine>)[new(ReferenceLineKind.Present, At(answer.Present.Value), $"as it stands: {terms.WithUnit(answer.Present.Value)}")]
                            : [],
                    ],
                    Markers = Markers(terms, answer, At),
                },
            ],
            Notes = Notes(scenario.Horizon, terms, answer, shown),
        };
    }

    private static string Title(SizingTerms terms, SizingAnswer answer) =>
        answer.Question.Subject.Length == 0 ? $"Minutes over {terms.Quantity}" : $"{VisibleText.Shortened(answer.Question.Subject, 40)}: minutes over {terms.Quantity}";

    /// <summary>The least endurance over what has to last so long, in every case.</summary>
    private static PlotSeries Curve(Scenario scenario, ImmutableArray<Trial> shown, Duration required, int style, Func<double, double> at)
    {
        var which = scenario.Requirements.Index().Where(item => item.Item.Endure == required).Select(item => item.Index).ToArray();
        return new PlotSeries(
            $"least of what must last {CellText.RoundMinutes(required)} min",
            style,
            [
                .. from trial in shown
                   let least = which.Select(i => trial.ByRequirement[i]).Where(time => time is not null).Min()
                   where least is not null
                   select new PlotPoint(at(trial.Value), least.Value.Minutes),
            ]);
    }

    private static ImmutableArray<Trial> Shown(SizingAnswer answer, bool isLogarithmic)
    {
        var all = answer.Limit.AtLimit is { } at ? answer.Limit.Curve.Where(trial => trial.Value != at.Value).Append(at) : answer.Limit.Curve;
        double[] centres = [.. new[] { answer.Limit.Limit ?? 0, answer.Present.Value }.Where(value => value > 0)];
        return
        [
            .. all
                .Where(trial => !isLogarithmic || (trial.Value > 0 && (centres.Length == 0 || (trial.Value >= centres.Min() / Around && trial.Value <= centres.Max() * Around))))
                .OrderBy(trial => trial.Value),
        ];
    }

    private static ImmutableArray<PlotMarker> Markers(SizingTerms terms, SizingAnswer answer, Func<double, double> at) =>
        answer.Limit is { IsBeyondRange: false, AtLimit: { Endurance: { } lasts } edge }
            ? [new PlotMarker(new PlotPoint(at(edge.Value), lasts.Minutes), terms.SafeWithUnit(edge.Value), 4)]
            : [];

    private static ImmutableArray<string> Notes(Duration horizon, SizingTerms terms, SizingAnswer answer, ImmutableArray<Trial> shown) =>
    [
        answer.Deciding.LimitedBy is { } part ? $"Decided by the case {answer.Deciding.Case} and {part}." : "Nothing that a requirement names is lost.",
        .. shown.Any(trial => trial.Endurance is null) ? (ImmutableArray<string>)[$"Where the curve is missing, nothing is lost within {CellText.RoundMinutes(horizon)} min."] : [],
        .. answer.Limit.IsNotMonotonic ? (ImmutableArray<string>)[$"The answer turns back: some values of {terms.Quantity} beyond the limit pass again."] : [],
        .. answer.Question is { Find: SizingFind.Capacity, KeepsResistance: false } ? (ImmutableArray<string>)["Resistance falls as 1/capacity."] : [],
    ];
}
