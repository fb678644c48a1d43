namespace Endurance.Cli.Tests;

/// <summary>Networks at the edge of what can be asked: each is answered in words and with an exit code, never with a number made up.</summary>
public sealed class PlainAnswerTests
{
    [Fact]
    public void DeadBus_LoadOnIt_WasNeverFedAndCountsZeroMinutes()
    {
        var answer = CaseAnswer.Of("dead_bus", "as_drawn");

        Assert.Equal(0, answer.Number("loads", "tail_light", "minutes_powered"));
        Assert.Equal("never fed", answer.Text("loads", "tail_light", "lost_because"));
        Assert.Equal(0, answer.Number("buses", "tail_bus", "start_volts"));
        Assert.Equal(0, answer.Number("buses", "tail_bus", "minutes_to_cutoff"));
        Assert.Null(answer.Number("loads", "display", "minutes_powered"));
    }

    [Fact]
    public void DeadBus_SwitchedOnLater_StaysLostWithoutARestartVoltage()
    {
        var answer = CaseAnswer.Of("dead_bus", "tail_switched_on");

        Assert.Equal(0, answer.Number("loads", "tail_light", "minutes_lost_for_good"));
        Assert.Equal(0, answer.Number("buses", "tail_bus", "minutes_to_cutoff"));
        Assert.Null(answer.Number("buses", "tail_bus", "minutes_to_cutoff_for_good"));
        Assert.Contains("tail_feed closed", answer.Events);
    }

    [Fact]
    public void Load_ThatAsksForMoreVoltsThanThereAre_IsLostAtOnceAndFailsItsRequirement()
    {
        var run = CaseAnswer.Table("dead_bus");
        var answer = CaseAnswer.Of("dead_bus", "as_drawn");

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("heater lost: below minimum", run.Output, StringComparison.Ordinal);
        Assert.Equal("fail", answer.Text("verdict"));
        Assert.Equal("heater", answer.Text("limited_by"));
        Assert.Equal(0, answer.Number("endurance_minutes"));
    }

    [Fact]
    public void UnfedBus_IsWarnedAboutAndItsLoadFailsInWords()
    {
        var run = CaseAnswer.Table("unfed_bus");

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("nothing feeds the bus `spare_bus`", run.Error, StringComparison.Ordinal);
        Assert.Contains("spare_radio lost: never fed", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Collapse_AtOnce_IsNamedAndLeavesWhatTheBatteryCanCarry()
    {
        var run = CaseAnswer.Table("collapse");
        var answer = CaseAnswer.Of("collapse", "all_on");

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("voltage collapse on bus", run.Output, StringComparison.Ordinal);
        Assert.Equal("voltage collapse", answer.Text("loads", "display", "lost_because"));
        Assert.Equal(0, answer.Number("loads", "de_icing", "minutes_powered"));
        Assert.Equal(0, answer.Number("buses", "bus", "minutes_to_cutoff"));
        Assert.Null(answer.Number("buses", "bus", "minutes_to_cutoff_for_good"));
    }

    [Fact]
    public void Load_ThatOutlastsTheHorizon_IsMoreThanItAndNull()
    {
        var run = CaseAnswer.Table("outlasts");
        var answer = CaseAnswer.Of("outlasts", "plain_discharge");

        Assert.Equal(0, run.ExitCode);
        Assert.Contains("more than 60", run.Output, StringComparison.Ordinal);
        Assert.Null(answer.Number("endurance_minutes"));
        Assert.Null(answer.Text("limited_by"));
        Assert.Equal("pass", answer.Text("verdict"));
        Assert.Null(answer.Number("batteries", "large_battery", "minutes_to_exhaustion"));
    }

    [Fact]
    public void Load_ShedBeforeItIsLost_IsNotLost()
    {
        var answer = CaseAnswer.Of("outlasts", "clock_off");

        Assert.Null(answer.Number("loads", "clock", "minutes_powered"));
        Assert.Null(answer.Text("loads", "clock", "lost_because"));
        Assert.Contains("clock shed", answer.Events);
    }

    [Fact]
    public void System_Of28Volts_MeetsItsCutoffWhereTheLineDoes()
    {
        var answer = CaseAnswer.Of("system_28v", "generator_failure");

        Assert.Equal(25.8, answer.Number("buses", "main_bus", "start_volts")!.Value, 1e-4);
        Assert.Equal(48, answer.Number("buses", "main_bus", "minutes_to_cutoff")!.Value, 0.005);
        Assert.Equal(120, answer.Number("loads", "steady", "minutes_powered")!.Value, 0.005);
        Assert.Equal("pass", answer.Text("verdict"));
        Assert.Equal(0, CaseAnswer.Table("system_28v").ExitCode);
    }
}
