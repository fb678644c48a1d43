using System.Text.Json;
using Endurance.Quantities;
using Endurance.Reports;
using Endurance.Studies.FailureCases;

namespace Endurance.Tests.Reports;

public sealed class FailureCaseJsonTests
{
    [Fact]
    public void Write_Fixture_MatchesTheWholeExpectedText() =>
        GoldenText.AssertMatches("report.json", FailureCaseJson.Write(ReportFixture.Scenario.Title, ReportFixture.Cases));

    [Fact]
    public void Write_NumbersThatRoundToZeroFromBelow_PrintZeroWithoutSign()
    {
        var text = FailureCaseJson.Write("x", ReportFixture.Cases);

        Assert.Contains("\"lowest_volts\": 0\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain(": -0\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_EveryKindOfName_ComesBackFromAParser()
    {
        foreach (var name in AwkwardText.All)
        {
            var text = FailureCaseJson.Write(name, [ReportFixture.Cases[0] with { Name = name, LimitedBy = name }]);

            using var parsed = JsonDocument.Parse(text);
            Assert.Equal(name, parsed.RootElement.GetProperty("scenario").GetString());
            Assert.Equal(name, parsed.RootElement.GetProperty("cases")[0].GetProperty("limited_by").GetString());
        }
    }

    [Fact]
    public void Write_CaseNotLost_HasNullMinutes()
    {
        using var parsed = JsonDocument.Parse(FailureCaseJson.Write("x", [ReportFixture.Cases[2]]));

        var written = parsed.RootElement.GetProperty("cases")[0];
        Assert.Equal(JsonValueKind.Null, written.GetProperty("endurance_minutes").ValueKind);
        Assert.Equal(JsonValueKind.Null, written.GetProperty("minutes_after_recognition").ValueKind);
        Assert.Equal(JsonValueKind.Null, written.GetProperty("loads")[0].GetProperty("lost_because").ValueKind);
    }

    [Fact]
    public void Write_CaseWithTwoCapacityModels_HasTheKineticMinutesBesideTheOthers()
    {
        var answered = ReportFixture.Cases[0] with { Kinetic = new ModelAnswer(Duration.FromMinutes(101.25), "com_receive"), Peukert = new ModelAnswer(Duration.FromMinutes(83.21404), "primary_display") };
        var endless = answered with { Kinetic = new ModelAnswer(null, null) };
        using var parsed = JsonDocument.Parse(FailureCaseJson.Write("x", [answered, endless, ReportFixture.Cases[0]]));
        var cases = parsed.RootElement.GetProperty("cases");

        Assert.Equal(101.25, cases[0].GetProperty("endurance_minutes_kinetic").GetDouble());
        Assert.Equal(JsonValueKind.Null, cases[1].GetProperty("endurance_minutes_kinetic").ValueKind);
        Assert.False(cases[2].TryGetProperty("endurance_minutes_kinetic", out _));
        var text = MarkdownReport.Write(FailureCaseReport.Describe(ReportFixture.Scenario, [answered]));
        Assert.Contains("Peukert sum: primary_display lost first, after 83.2 min.", text, StringComparison.Ordinal);
        Assert.Contains("com_receive lost first, after 101.3 min.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_NotANumber_IsAFaultOfTheProgram()
    {
        var bad = ReportFixture.Cases[0] with { Endurance = Duration.FromMinutes(1) * double.NaN };

        Assert.Throws<ArgumentOutOfRangeException>(() => FailureCaseJson.Write("x", [bad]));
    }

    [Fact]
    public void Write_CommaCulture_WritesTheSameText()
    {
        var expected = FailureCaseJson.Write("x", ReportFixture.Cases);

        Assert.Equal(expected, CommaCulture.Run(() => FailureCaseJson.Write("x", ReportFixture.Cases)));
    }
}
