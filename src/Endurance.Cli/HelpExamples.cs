namespace Endurance.Cli;

/// <summary>Examples and exit codes of each command, from the text that is built in.</summary>
internal static class HelpExamples
{
    /// <summary>Stands for the program itself.</summary>
    public const string Program = "endurance";

    private const string Resource = "examples.txt";
    private const string Head = "== ";

    /// <exception cref="InvalidOperationException">The command has none.</exception>
    public static string Of(string command)
    {
        using var stream = typeof(HelpExamples).Assembly.GetManifestResourceStream(Resource) ?? throw new InvalidOperationException($"{Resource} is not built in.");
        using var reader = new StreamReader(stream);
        var start = Head + command;
        while (reader.ReadLine() is { } line)
        {
            if (string.Equals(line, start, StringComparison.Ordinal))
                return Section(reader);
        }

        throw new InvalidOperationException($"{command} has no examples.");
    }

    private static string Section(StreamReader reader)
    {
        var lines = new List<string>();
        while (reader.ReadLine() is { } line && !line.StartsWith(Head, StringComparison.Ordinal))
            lines.Add(line);
        return string.Join(Environment.NewLine, lines).TrimEnd();
    }
}
