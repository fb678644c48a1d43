using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Scenarios;

namespace Endurance.Studies.FailureCases.Findings;

/// <summary>Answers too near to what is required to tell pass from fail.</summary>
internal static class MarginFindings
{
    private const double ThinShare = 0.1;

    public static IEnumerable<Finding> Of(ImmutableArray<RequirementResult> judged)
    {
        foreach (var result in judged)
        {
            if (result.Endurance is not { } lasts)
                continue;
            var share = (lasts / result.Requirement.Endure) - 1;
            if (Math.Abs(share) >= ThinShare)
                continue;
            var value = FormattableString.Invariant($"{share * 100:+0.0;-0.0;0.0} %");
            yield return new Finding("thin-margin", Severity.Caution, result.LimitedBy ?? "", value,
                $"{result.LimitedBy} lasts {Figures.Minutes(lasts)} against {Figures.Minutes(result.Requirement.Endure)} required, within 10 %. Age, cold and the spread of real batteries are wider than that: do not take it for a clear {Word(result.Verdict)}.");
        }
    }

    private static string Word(Verdict verdict) => verdict == Verdict.Pass ? "pass" : "fail";
}
