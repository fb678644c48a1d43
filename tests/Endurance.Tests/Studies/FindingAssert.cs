using Endurance.Findings;
using Endurance.Studies.FailureCases;

namespace Endurance.Tests.Studies;

/// <summary>Compares findings whole.</summary>
internal static class FindingAssert
{
    /// <summary>The one finding of its code is exactly this.</summary>
    public static void Is(CaseResult result, Finding expected) =>
        Assert.Equal(expected, Assert.Single(result.Findings, finding => finding.Code == expected.Code));

    public static void None(CaseResult result, string code) =>
        Assert.DoesNotContain(result.Findings, finding => finding.Code == code);
}
