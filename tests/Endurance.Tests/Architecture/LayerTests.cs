using System.Reflection;
using Endurance.Scenarios;
using Endurance.Yaml;
using NetArchTest.Rules;

namespace Endurance.Tests.Architecture;

/// <summary>Which part of the program may use which.</summary>
public sealed class LayerTests
{
    /// <summary>Folders of the library, lowest first; each may use only those before it.</summary>
    private static readonly string[] Layers =
        ["Quantities", "Findings", "Numerics", "Components", "Library", "Scenarios", "Simulation", "Studies"];

    private static readonly Assembly Core = typeof(Scenario).Assembly;
    private static readonly Assembly Yaml = typeof(ScenarioReader).Assembly;
    private static readonly Assembly Reports = Assembly.Load("Endurance.Reports");

    public static TheoryData<string> LowerLayers => [.. Layers[..^1]];

    [Theory]
    [MemberData(nameof(LowerLayers))]
    public void Layer_OfTheLibrary_UsesOnlyThoseBelowIt(string layer)
    {
        var above = Layers[(Array.IndexOf(Layers, layer) + 1)..].Select(name => $"Endurance.{name}").ToArray();

        AssertNone(Types.InAssembly(Core).That().ResideInNamespace($"Endurance.{layer}").ShouldNot().HaveDependencyOnAny(above));
    }

    [Fact]
    public void Library_Types_StandInALayer()
    {
        var outside = Core.GetTypes()
            .Where(type => type.Namespace?.StartsWith("Endurance", StringComparison.Ordinal) == true)
            .Where(type => !Layers.Any(layer => $"{type.Namespace}.".StartsWith($"Endurance.{layer}.", StringComparison.Ordinal)))
            .Select(type => type.FullName);

        Assert.Empty(outside);
    }

    [Fact]
    public void Library_Code_KnowsNoFilesNoConsoleAndNoClock() =>
        AssertNone(Types.InAssembly(Core).ShouldNot().HaveDependencyOnAny(
            "System.IO", "System.Console", "System.DateTime", "System.DateTimeOffset", "System.TimeProvider", "System.Diagnostics.Stopwatch", "System.Diagnostics.Process", "System.Random"));

    [Fact]
    public void Library_References_AreTheRuntimeAndMathNetAlone() =>
        Assert.DoesNotContain(Core.GetReferencedAssemblies(), name => !IsRuntime(name.Name!) && name.Name != "MathNet.Numerics");

    [Fact]
    public void Yaml_References_AreTheRuntimeTheLibraryAndYamlDotNetAlone() =>
        Assert.DoesNotContain(Yaml.GetReferencedAssemblies(), name => !IsRuntime(name.Name!) && name.Name is not ("Endurance.Core" or "YamlDotNet"));

    [Fact]
    public void Reports_Code_DrawsOnlyInPlots() =>
        AssertNone(Types.InAssembly(Reports).That().DoNotResideInNamespace("Endurance.Reports.Plots")
            .ShouldNot().HaveDependencyOnAny("ScottPlot", "SkiaSharp"));

    [Theory]
    [InlineData("YamlDotNet", "src/Endurance.Yaml/")]
    [InlineData("ScottPlot", "src/Endurance.Reports/Plots/")]
    [InlineData("SkiaSharp", "src/Endurance.Reports/Plots/")]
    [InlineData("System.CommandLine", "src/Endurance.Cli/")]
    [InlineData("CsvHelper", "src/Endurance.Cli/Logs/")]
    public void Package_Named_OnlyWhereItBelongs(string package, string folder)
    {
        var elsewhere = Repository.Sources("src")
            .Where(path => !path.StartsWith(folder, StringComparison.Ordinal))
            .Where(path => Repository.Lines(path).Any(line => line.Contains(package + ".", StringComparison.Ordinal) || line.Contains(package + ";", StringComparison.Ordinal)));

        Assert.Empty(elsewhere);
    }

    private static bool IsRuntime(string name) =>
        name.StartsWith("System", StringComparison.Ordinal) || name is "netstandard" or "mscorlib";

    private static void AssertNone(ConditionList rule)
    {
        var result = rule.GetResult();
        Assert.True(result.IsSuccessful, string.Join(", ", result.FailingTypeNames ?? []));
    }
}
