using System.Globalization;
using Endurance.Cli.Logs;
using Endurance.Findings;
using Endurance.Yaml;

namespace Endurance.Cli.Tests.Logs;

public sealed class LogReaderTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    public static TheoryData<string, string, string> Dialects => new()
    {
        { "commas, seconds", "time_s,voltage,current", "60,12.5,-2.25" },
        { "semicolons, decimal comma, minutes", "Time (min);Voltage [V];Current [A]", "1,0;12,5;-2,25" },
        { "tabs, hours, millivolts", "t_h\tmV voltage\tcurrent_mA", "0.016666666666666666\t12500\t-2250" },
        { "commas, quoted decimal comma", "seconds,volts,amps", "\"60,0\",\"12,5\",\"-2,25\"" },
        { "timestamps with a blank", "timestamp,volts,amps", "2026-05-02 00:01:00.000,12.5,-2.25" },
        { "ISO timestamps with a zone", "date;u;i", "2026-05-02T02:01:00+02:00;12,5;-2,25" },
        { "slashes, no seconds", "datetime,v,a", "2026/05/02 00:01,12.5,-2.25" },
        { "other columns between", "run,time_s,note,battery voltage,load current", "1,60,cold,12.5,-2.25" },
    };

    [Theory]
    [MemberData(nameof(Dialects))]
    public void Log_InAnyDialect_HoldsTheSameNumbers(string dialect, string heading, string row)
    {
        var reading = Read(heading + "\n" + string.Concat(Enumerable.Range(0, 10).Select(i => At(row, i) + "\n")));

        Assert.True(reading.Diagnostics.IsEmpty, dialect + ": " + DiagnosticRenderer.Render(reading.Diagnostics));
        Assert.Equal(10, reading.Samples.Length);
        Assert.Equal(12.5, reading.Samples[9].Volts);
        Assert.Equal(-2.25, reading.Samples[9].Amperes);
        Assert.Null(reading.Samples[9].Celsius);
        Assert.Equal(540, reading.Samples[9].Seconds, 1e-6);
    }

    [Fact]
    public void Temperature_InFahrenheit_IsInDegreesCelsius() =>
        Assert.Equal(25, Read("time_s,volts,amps,temp_f\n" + Rows("12.5,1,77")).Samples[0].Celsius!.Value, 1e-9);

    [Fact]
    public void Cells_Empty_AreAbsentSignals()
    {
        var reading = Read("# a logger\ntime_s,volts,amps,temperature\n" + Rows("12.5,1,") + "\n100,,,24.5\n101,12.4,,\n");

        Assert.Empty(reading.Diagnostics);
        Assert.Equal((null, null, 24.5), (reading.Samples[^2].Volts, reading.Samples[^2].Amperes, reading.Samples[^2].Celsius));
        Assert.Equal((12.4, null), (reading.Samples[^1].Volts, reading.Samples[^1].Amperes));
    }

    [Fact]
    public void Rows_OutOfOrderOrRepeated_AreSortedAndMergedWithAWord()
    {
        var reading = Read("time_s,volts,amps,temperature\n" + Rows("12.5,1,") + "5.5,12.25,,\n9,12.1,,20\n");

        Assert.Equal(11, reading.Samples.Length);
        Assert.Equal(12.25, reading.Samples[6].Volts);
        Assert.Equal((12.1, 1.0, 20.0), (reading.Samples[^1].Volts, reading.Samples[^1].Amperes, reading.Samples[^1].Celsius));
        Assert.Equal(["rows-out-of-order", "times-repeated"], reading.Notes.Select(note => note.Code));
    }

    [Fact]
    public void Time_StartingOver_IsAnotherRecordingADayLater()
    {
        var reading = Read("time_s,volts,amps\n" + Rows("12.5,1") + Rows("12.6,2"));

        Assert.Equal(20, reading.Samples.Length);
        Assert.Equal(9 + (24 * 3600), reading.Samples[10].Seconds);
        Assert.Equal("The time starts over at line 12: each is taken for another recording.", Assert.Single(reading.Notes).Message);
    }

    /// <summary>Sorted together, two discharges would be one with the mean of their currents over the longer of their times.</summary>
    [Fact]
    public void Time_StartingOverAboveTheFirstTime_IsAnotherRecording()
    {
        var second = string.Concat(Enumerable.Range(0, 10).Select(i => FormattableString.Invariant($"{i + 0.5},12.6,2\n")));

        var reading = Read("time_s,volts,amps\n" + Rows("12.5,1") + second);

        Assert.Equal(Enumerable.Repeat(1.0, 10).Concat(Enumerable.Repeat(2.0, 10)), reading.Samples.Select(sample => sample.Amperes!.Value));
        Assert.Equal("time-starts-over", Assert.Single(reading.Notes).Code);
    }

    [Fact]
    public void Time_SetBackInTheMiddle_IsSortedWithACaution()
    {
        var reading = Read("time_s,volts,amps\n" + Rows("12.5,1") + "3.5,12.6,2\n10,12.4,1\n");

        Assert.Equal(2.0, reading.Samples[4].Amperes);
        var note = Assert.Single(reading.Notes);
        Assert.Equal(("rows-out-of-order", Severity.Caution), (note.Code, note.Severity));
        Assert.StartsWith("1 row stands before an earlier one", note.Message, StringComparison.Ordinal);
    }

    public static TheoryData<string, string> Faults => new()
    {
        {
            "time_s,volts,amps\n0,12.5,1\n1,twelve,1\n2,12.5,1.2.3\n",
            """
            LOG:3:3: error[not-a-number]: `twelve` is not a voltage
              3 | 1,twelve,1
                |   ^^^^^^
              expected: a number such as 12.61, or an empty cell

            LOG:4:8: error[not-a-number]: `1.2.3` is not a current
              4 | 2,12.5,1.2.3
                |        ^^^^^
              expected: a number such as -3.05, or an empty cell

            """
        },
        {
            "time,volts,amps\n0,12.5,1\n1,12.4,1\n",
            """
            LOG:2:1: error[time-without-unit]: `0` is a number, and the heading does not say whether it is seconds, minutes or hours
              2 | 0,12.5,1
                | ^
              expected: a heading with the unit, such as time_s, time_min or time_h

            """
        },
        {
            "time_s,pressure\n0,12.5\n",
            """
            LOG:1:1: error[column-missing]: no column is headed as a voltage
              1 | time_s,pressure
                | ^^^^^^^^^^^^^^^
              expected: a column headed voltage or volts

            LOG:1:1: error[column-missing]: no column is headed as a current
              1 | time_s,pressure
                | ^^^^^^^^^^^^^^^
              expected: a column headed current or amps

            """
        },
        {
            "date,time,volts,amps\n2026-05-02,10:00,12.5,1\n",
            """
            LOG:1:6: error[column-twice]: `time` is a time, and so is `date`
              1 | date,time,volts,amps
                |      ^^^^
              expected: one time column; date and time of day belong into one

            """
        },
        {
            "time_s,volts,amps\n0,12,5,1\n1,12.5\n",
            """
            LOG:2:8: error[cell-count]: this line has 4 cells
              2 | 0,12,5,1
                |        ^
              expected: 3, as there are headings; a decimal comma needs another separator, such as a semicolon

            LOG:3:7: error[cell-count]: this line has 2 cells
              3 | 1,12.5
                |       ^
              expected: 3, as there are headings

            """
        },
        {
            "time_s;volts;amps\n0;12,5;1\n1;12.4;1\n;12,4;1\n",
            """
            LOG:3:3: error[not-a-number]: `12.4` has a decimal point where earlier numbers have a decimal comma
              3 | 1;12.4;1
                |   ^^^^
              expected: a number such as 12.61, or an empty cell

            LOG:4:1: error[time-missing]: this line has values but no time
              4 | ;12,4;1
                | ^
              expected: a time, such as 2026-05-02 14:30:05.250

            """
        },
        {
            "time_s,volts,amps\n0,1250,1\n1,NaN,1\n02/05/2026 10:00,12.5,1\n",
            """
            LOG:2:3: error[out-of-range]: `1250` is outside what a voltage of a battery can be
              2 | 0,1250,1
                |   ^^^^
              expected: 0 to 100

            LOG:3:3: error[not-a-number]: `NaN` is not a voltage
              3 | 1,NaN,1
                |   ^^^
              expected: a number such as 12.61, or an empty cell

            LOG:4:1: error[not-a-time]: `02/05/2026 10:00` is not a time
              4 | 02/05/2026 10:00,12.5,1
                | ^^^^^^^^^^^^^^^^
              expected: a number in the unit of the heading, such as 12.5

            """
        },
        {
            "timestamp,volts,amps\n2026-05-02 10:00:00,12.5,1\n2026-05-02 10:01:00Z,12.5,1\n2026-13-02 10:01:00,12.5,1\n",
            """
            LOG:3:1: error[time-zone]: `2026-05-02 10:01:00Z` names its time zone, unlike earlier lines
              3 | 2026-05-02 10:01:00Z,12.5,1
                | ^^^^^^^^^^^^^^^^^^^^
              expected: timestamps all with their zone, or all without

            LOG:4:1: error[not-a-time]: `2026-13-02 10:01:00` is not a time
              4 | 2026-13-02 10:01:00,12.5,1
                | ^^^^^^^^^^^^^^^^^^^
              expected: a timestamp, such as 2026-05-02 14:30:05.250

            """
        },
        {
            "time_s,volts,amps\n0,\"12.5,1\n1,12.5,1\n",
            """
            LOG:2:1: error[quotes]: the quotation marks of this line do not pair
              2 | 0,"12.5,1
                | ^^^^^^^^^
              expected: numbers without quotation marks

            """
        },
        { "voltage\n12.5\n", "LOG:1:1: error[no-separator]: the line of headings has one column\n  1 | voltage\n    | ^^^^^^^\n  expected: headings separated by commas, semicolons or tabs, such as time_s,voltage,current\n" },
        { "\n# nothing\n", "LOG: error[log-empty]: the log is empty\n  expected: a line of headings and rows below it\n" },
        { "time_s,volts,amps\n0,12.5,1\n", "LOG: error[log-too-short]: the log holds 1 rows\n  expected: at least 10 rows below the headings\n" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void Fault_InALog_IsToldAtItsPlace(string text, string expected)
    {
        var reading = Read(text);

        Assert.Equal(expected, DiagnosticRenderer.Render(reading.Diagnostics).Replace(_folder["log.csv"], "LOG", StringComparison.Ordinal));
        Assert.Empty(reading.Samples);
    }

    [Fact]
    public void File_ThatIsNone_IsToldAsALog() =>
        Assert.Equal(
            $"{_folder["none.csv"]}: error[file-not-found]: there is no such file\n  expected: the path of a log, a text file with comma-separated values\n",
            DiagnosticRenderer.Render(LogReader.Read(_folder["none.csv"]).Diagnostics));

    [Fact]
    public void File_BeyondTheLimit_IsNotRead()
    {
        using (var stream = File.Create(_folder["large.csv"]))
            stream.SetLength((64L * 1024 * 1024) + 1);

        Assert.Equal("file-too-large", Assert.Single(LogReader.Read(_folder["large.csv"]).Diagnostics).Code);
    }

    private LogReading Read(string text) => LogReader.Read(_folder.Write("log.csv", text));

    private static string Rows(string values) => string.Concat(Enumerable.Range(0, 10).Select(i => string.Create(CultureInfo.InvariantCulture, $"{i},{values}\n")));

    /// <summary>The row some minutes later, whatever way its time is written.</summary>
    private static string At(string row, int minutes)
    {
        string Number(double value) => value.ToString(CultureInfo.InvariantCulture);
        return row
            .Replace("00:01", $"00:0{minutes}", StringComparison.Ordinal).Replace("02:01", $"02:0{minutes}", StringComparison.Ordinal)
            .Replace("60,", Number(60 * minutes) + ",", StringComparison.Ordinal)
            .Replace("1,0;", $"{minutes},0;", StringComparison.Ordinal)
            .Replace("0.016666666666666666", Number(minutes / 60.0), StringComparison.Ordinal);
    }
}
