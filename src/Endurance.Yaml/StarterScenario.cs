namespace Endurance.Yaml;

/// <summary>A commented scenario to begin from.</summary>
public static class StarterScenario
{
    private const string Resource = "Endurance.Yaml.Starter.starter.yaml";

    /// <summary>The whole file; reads without diagnostics and meets its own requirements.</summary>
    public static string Text
    {
        get
        {
            using var stream = typeof(StarterScenario).Assembly.GetManifestResourceStream(Resource)
                ?? throw new InvalidOperationException($"The resource {Resource} is not in the assembly.");
            using var reader = new StreamReader(stream);
            return reader.ReadToEnd();
        }
    }
}
