using System.Reflection;
using System.Runtime.CompilerServices;
using Endurance.Scenarios;
using Endurance.Yaml;

namespace Endurance.Tests.Architecture;

/// <summary>The model never moves.</summary>
public sealed class ImmutabilityTests
{
    private const BindingFlags Everything =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly Assembly[] Assemblies = [typeof(Scenario).Assembly, typeof(ScenarioReader).Assembly, Assembly.Load("Endurance.Reports")];

    [Fact]
    public void PublicTypes_Properties_CannotBeSetAfterConstruction()
    {
        var settable = PublicTypes()
            .SelectMany(type => type.GetProperties(Everything))
            .Where(property => property.SetMethod is { IsPublic: true } setter && !IsInit(setter))
            .Select(property => $"{property.DeclaringType}.{property.Name}");

        Assert.Empty(settable);
    }

    [Fact]
    public void PublicTypes_Fields_AreReadOnlyOrConstant()
    {
        var open = PublicTypes()
            .SelectMany(type => type.GetFields(Everything))
            .Where(field => field is { IsPublic: true, IsInitOnly: false, IsLiteral: false } && !field.DeclaringType!.IsEnum)
            .Select(field => $"{field.DeclaringType}.{field.Name}");

        Assert.Empty(open);
    }

    [Fact]
    public void StaticFields_OfAnyType_NeverChange()
    {
        var changing = Assemblies.SelectMany(assembly => assembly.GetTypes())
            .Where(type => !IsGenerated(type))
            .SelectMany(type => type.GetFields(Everything))
            .Where(field => field is { IsStatic: true, IsInitOnly: false, IsLiteral: false })
            .Where(field => !field.IsDefined(typeof(CompilerGeneratedAttribute)) || !field.Name.StartsWith("<>", StringComparison.Ordinal))
            .Select(field => $"{field.DeclaringType}.{field.Name}");

        Assert.Empty(changing);
    }

    private static IEnumerable<Type> PublicTypes() => Assemblies.SelectMany(assembly => assembly.GetExportedTypes());

    private static bool IsInit(MethodInfo setter) =>
        setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));

    private static bool IsGenerated(Type type) =>
        type.FullName!.Contains('<', StringComparison.Ordinal) || type.IsDefined(typeof(CompilerGeneratedAttribute));
}
