namespace Endurance.Cli.Tests;

/// <summary>
/// Four networks solved by an independent program (network to 1e-12 V, state by an 8th-order Runge-Kutta method at a relative
/// tolerance of 1e-10) and again by two other general-purpose engines, read from files as a user writes them.
/// </summary>
public sealed class IndependentNetworkTests
{
    private const double Minutes = 0.005;
    private const double Volts = 0.001;
    private const double Amperes = 1e-4;

    [Fact]
    public void ConstantCurrent_FromItsFile_LastsAsSolvedIndependently()
    {
        var answer = CaseAnswer.Of("constant_current", "discharge");

        Near(75.7149, answer.Number("batteries", "battery", "minutes_to_exhaustion"), Minutes);
        Near(75.7149, answer.Number("endurance_minutes"), Minutes);
        Near(75.7149, answer.Number("loads", "load", "minutes_powered"), Minutes);
        Near(6 * 75.7149 / 60, answer.Number("batteries", "battery", "delivered_amp_hours"), 1e-3);
        Near(0, answer.Number("batteries", "battery", "charge_end"), 1e-6);
        Assert.Equal("bus dead", answer.Text("loads", "load", "lost_because"));
        Assert.Null(answer.Number("buses", "bus", "cutoff_volts"));
        Assert.Null(answer.Number("buses", "bus", "minutes_to_cutoff"));
        Assert.Null(answer.Number("minutes_after_recognition"));
        Assert.Equal("none", answer.Text("verdict"));
    }

    [Fact]
    public void ConstantPower_FromItsFile_LastsAsSolvedIndependently()
    {
        var answer = CaseAnswer.Of("constant_power", "discharge");

        Near(12.5821, answer.Number("buses", "bus", "start_volts"), Volts);
        Near(6.35825, answer.Number("batteries", "battery", "start_amps"), Amperes);
        Near(65.7841, answer.Number("buses", "bus", "minutes_to_cutoff"), Minutes);
        Near(9.5, answer.Number("buses", "bus", "cutoff_volts"), 0);
    }

    [Fact]
    public void TwoBatteries_FromTheirFile_LastAsSolvedIndependently()
    {
        var answer = CaseAnswer.Of("two_batteries", "discharge");

        Near(12.3581, answer.Number("buses", "bus", "start_volts"), Volts);
        Near(7.44530, answer.Number("feeds", "d1", "start_amps"), Amperes);
        Near(0.115559, answer.Number("feeds", "d2", "start_amps"), Amperes);
        Near(2.92631, answer.Number("feeds", "d1", "highest_diode_watts"), Amperes);
        Near(116.868, answer.Number("buses", "bus", "minutes_to_cutoff"), Minutes);
        Near(0, answer.Number("feeds", "d1", "lowest_amps"), 1e-3);
        Near(0, answer.Number("feeds", "d1", "reverse_amp_hours"), 1e-4);
        Near(27, answer.Number("feeds", "d1", "highest_junction_degc"), 0);
    }

    [Fact]
    public void MainAndEssential_FromTheirFile_LastAsSolvedIndependently()
    {
        var answer = CaseAnswer.Of("main_and_essential", "alternator_failure");

        Near(12.6212, answer.Number("buses", "main_bus", "start_volts"), Volts);
        Near(12.2280, answer.Number("buses", "essential_bus", "start_volts"), Volts);
        Near(4.75153, answer.Number("feeds", "normal", "start_amps"), Amperes);
        Near(1.24505, answer.Number("feeds", "backup_feed", "start_amps"), Amperes);
        Near(60.4339, answer.Number("buses", "main_bus", "minutes_to_cutoff"), Minutes);
        Near(63.3127, answer.Number("batteries", "main_battery", "minutes_to_exhaustion"), Minutes);
        Near(118.424, answer.Number("buses", "essential_bus", "minutes_to_cutoff"), Minutes);
        Assert.Null(answer.Number("feeds", "master", "highest_diode_watts"));
    }

    private static void Near(double expected, double? actual, double tolerance)
    {
        Assert.NotNull(actual);
        Assert.Equal(expected, actual.Value, tolerance);
    }
}
