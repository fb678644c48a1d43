using System.Collections.Immutable;
using System.Text.Json;
using Endurance.Library;
using Endurance.Quantities;
using Endurance.Reports;
using Endurance.Reports.Plots;
using Endurance.Studies.BatteryCurves;
using Endurance.Tests.Yaml;

namespace Endurance.Tests.Reports;

public sealed class BatteryCurveTests
{
    private const string Sixteen = "capacity: 16 Ah, rate: 20 h, peukert: 1.2, health: 80 %, resistance: 20 mohm, emf: [[0 %, 10.6 V], [20 %, 12 V], [100 %, 12.8 V]]";

    [Fact]
    public void Rows_ToExhaustion_FollowTheLifetimeLaws()
    {
        var curve = Curve(Sixteen, new() { Currents = Amperes(5, 0.4) });
        var (low, high) = (curve.Rows[0], curve.Rows[1]);

        Assert.Equal(0.4, low.Current.Amperes);
        Assert.Equal(0.8 * 40 * 60, low.Lasts.Minutes, 1e-6);
        Assert.Equal(20 * 60 * 0.8 * Math.Pow(0.8 / 5, 1.2), high.Lasts.Minutes, 1e-6);
        Assert.Equal(20 * 60 * Math.Pow(0.8 / 5, 1.2), high.LastsNew.Minutes, 1e-6);
        Assert.Null(high.Given);
    }

    [Fact]
    public void KineticColumn_IsWhatTheSimulationGives()
    {
        var scenario = BatteryText.Scenario(Sixteen + ", capacity_model: kinetic", "current: 5 A");
        var row = BatteryCurveStudy.Run(scenario, scenario.Batteries[0], new() { Currents = Amperes(5) }).Rows[0];

        Assert.Equal(scenario.Run().Battery("battery").TimeToExhaustion.Minutes(), row.LastsKinetic!.Value.Minutes, 1e-3);
    }

    /// <summary>EMF 10.6 + 7 z below 20 %: 11 V at 5 A and 20 mohm means z = 0.5/7.</summary>
    [Fact]
    public void Rows_ToAVoltage_EndThere()
    {
        var curve = Curve(Sixteen, new() { Currents = Amperes(5), EndVoltage = Voltage.FromVolts(11) });

        Assert.Equal(20 * 60 * 0.8 * Math.Pow(0.8 / 5, 1.2) * (1 - (0.5 / 7)), curve.Rows[0].Lasts.Minutes, 1e-3);
    }

    [Fact]
    public void ToAVoltage_BelowWhichTheBatteryStandsFromTheStart_IsZero() =>
        Assert.Equal(0, Curve(Sixteen, new() { Currents = Amperes(200), EndVoltage = Voltage.FromVolts(10.5) }).Rows[0].Lasts.Minutes);

    [Fact]
    public void DefaultCurrents_HoldEveryStatedOneWithItsMinutes()
    {
        var curve = Curve("ratings: [[20 h, 16 Ah], [1 h, 10 Ah]], resistance: 20 mohm, emf: [[0 %, 10.6 V], [100 %, 12.8 V]]", new());

        Assert.Equal([1200, 60], curve.Rows.Where(row => row.Given is not null).Select(row => Math.Round(row.Given!.Value.Minutes, 6)));
        Assert.Equal([0.5, 0.8, 1, 2, 5, 10, 20], curve.Rows.Select(row => Math.Round(row.Current.Amperes, 6)));
    }

    [Fact]
    public void DataSheet_ToItsEndVoltage_RunsThroughItsPoints()
    {
        var curve = Curve(
            "chemistry: agm, discharge_points: [{current: 0.4 A, lasts: 20 h, to: 10.5 V}, {current: 4.5 A, lasts: 1 h, to: 10.5 V}, {power: 90 W, lasts: 25 min, to: 10.5 V}]",
            new() { EndVoltage = Voltage.FromVolts(10.5) });
        var given = curve.Rows.Where(row => row.Given is not null).ToList();

        Assert.Equal(3, given.Count);
        Assert.All(given[..2], row => Assert.Equal(row.Given!.Value.Minutes, row.LastsNew.Minutes, row.Given.Value.Minutes * 0.001));
        Assert.Equal(25, given[2].Given!.Value.Minutes, 9);
        Assert.Empty(curve.RatingChecks);
    }

    /// <summary>4.5 A through 100 mohm drops 0.45 V: 10.5 V is reached at E = 10.95 V, z = 0.45/2.5 of this straight EMF.</summary>
    [Fact]
    public void ExponentThatHoldsTheDrop_IsCheckedAndWarnedAbout()
    {
        var scenario = BatteryText.Scenario("ratings: [[20 h, 7.2 Ah], [1 h, 4.5 Ah]], resistance: 100 mohm, emf: [[0 %, 10.5 V], [100 %, 13 V]]", "current: 1 A");
        var curve = BatteryCurveStudy.Run(scenario, scenario.Batteries[0], new());

        Assert.Equal(0.45 / 2.5, curve.RatingChecks[1].ChargeLeft, 1e-6);
        Assert.Equal(0.036 / 2.5, curve.RatingChecks[0].ChargeLeft, 1e-6);
        var text = MarkdownReport.Write(BatteryCurveReport.Describe(scenario, [curve]));
        Assert.Contains("At 4.5 A the end of its rating, 10.50 V, is reached with 18.0 % of the charge left.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("At 0.36 A the end", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_HoldsTheFixedKeys()
    {
        using var json = JsonDocument.Parse(BatteryCurveJson.Write(Curve(Sixteen.Replace("1.2,", "1,", StringComparison.Ordinal), new() { Currents = Amperes(5) })));

        Assert.Equal("battery", json.RootElement.GetProperty("battery").GetString());
        var row = json.RootElement.GetProperty("rows")[0];
        Assert.Equal(["amps", "minutes", "minutes_kinetic", "given_minutes"], row.EnumerateObject().Select(property => property.Name));
        Assert.Equal(5, row.GetProperty("amps").GetDouble());
        Assert.Equal(16 * 0.8 / 5 * 60, row.GetProperty("minutes").GetDouble(), 1e-4);
        Assert.Equal(JsonValueKind.Null, row.GetProperty("minutes_kinetic").ValueKind);
        Assert.Equal(JsonValueKind.Null, row.GetProperty("given_minutes").ValueKind);
    }

    [Fact]
    public void Plot_IsLogarithmicWithThreeCurvesAndTheStatedPoints()
    {
        var plot = BatteryCurvePlot.Describe("Bench", Curve("ratings: [[20 h, 16 Ah], [1 h, 10 Ah]], resistance: 20 mohm, emf: [[0 %, 10.6 V], [100 %, 12.8 V]]", new()));
        var panel = Assert.Single(plot.Panels);

        Assert.True(panel.X.IsLogarithmic && panel.Y!.IsLogarithmic);
        Assert.Equal(3, panel.Series.Length);
        Assert.Equal([Math.Log10(0.8), 1], panel.Markers.Select(marker => Math.Round(marker.At.X, 12)), Close);
        Assert.Equal([Math.Log10(1200), Math.Log10(60)], panel.Markers.Select(marker => marker.At.Y), Close);
        Assert.NotEmpty(PlotRenderer.Png(plot));
    }

    [Fact]
    public void Parts_EveryChemistryValue_HasASource()
    {
        using var json = JsonDocument.Parse(PartsJson.Write());

        var chemistries = json.RootElement.GetProperty("chemistries").EnumerateArray().ToList();
        Assert.Equal(["flooded", "agm", "gel", "nicd", "lifepo4"], chemistries.Select(chemistry => chemistry.GetProperty("name").GetString()));
        Assert.All(chemistries.SelectMany(chemistry => chemistry.GetProperty("values").EnumerateArray()), value => Assert.NotEqual("", value.GetProperty("source").GetString()));
        Assert.Equal(17, json.RootElement.GetProperty("wires").GetArrayLength());
        Assert.Equal(DiodeTable.Rows.Select(row => row.Name), json.RootElement.GetProperty("diode_classes").EnumerateArray().Select(row => row.GetProperty("name").GetString()));
        Assert.Contains("from memory, unverified", MarkdownReport.Write(PartsReport.Describe()), StringComparison.Ordinal);
    }

    private static bool Close(double expected, double actual) => Math.Abs(expected - actual) < 1e-9;

    private static ImmutableArray<Current> Amperes(params double[] amperes) => [.. amperes.Select(Current.FromAmperes)];

    private static BatteryCurve Curve(string keys, BatteryCurveOptions options)
    {
        var scenario = BatteryText.Scenario(keys, "current: 1 A");
        return BatteryCurveStudy.Run(scenario, scenario.Batteries[0], options);
    }
}
