using Endurance.Findings;
using Endurance.Studies.FailureCases;

namespace Endurance.Tests.Studies;

/// <summary>Compares findings whole.</summary>
internal static class FindingAssert
{
    /// <summary>The one finding of its code is exactly this; or, where it is not to be found, there is none of its code.</summary>
    public static void Is(CaseResult result, Finding expected, bool found = true)
    {
        if (found)
            Assert.Equal(expected, Assert.Single(result.Findings, finding => finding.Code == expected.Code));
        else
            None(result, expected.Code);
    }

    public static void None(CaseResult result, string code) =>
        Assert.DoesNotContain(result.Findings, finding => finding.Code == code);
}
