using Endurance.Cli.Commands;
using Endurance.Reports.Html;
using Endurance.Simulation;
using Endurance.Studies;
using Endurance.Studies.FailureCases;
using Endurance.Yaml;

namespace Endurance.Cli.Watching;

/// <summary>Runs a scenario again whenever its file has been saved.</summary>
/// <remarks>The file is read at intervals: notices of a file system miss renames, folders on other machines and some editors.</remarks>
internal sealed class ScenarioWatch(string path, WatchBoard board, TextWriter told)
{
    private static readonly TimeSpan Interval = TimeSpan.FromMilliseconds(200);

    private string Name => Path.GetFileName(path);

    /// <exception cref="OperationCanceledException">The token was cancelled, which is how it ends.</exception>
    public async Task FollowAsync(FileLook first, CancellationToken cancellation)
    {
        var (look, file) = (first, new SettledFile(first.Version));
        while (true)
        {
            using var replaced = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
            var shown = look;
            var run = Task.Run(() => Show(shown, replaced.Token), CancellationToken.None);
            try
            {
                do
                {
                    await Task.Delay(Interval, cancellation);
                    look = FileLook.At(path);
                    file = file.After(look);
                }
                while (!file.IsNews);
            }
            finally
            {
                // A run of contents that nobody wants any more is not waited out.
                await replaced.CancelAsync();
                await run;
            }
        }
    }

    private void Show(FileLook look, CancellationToken cancellation)
    {
        try
        {
            var state = Run(look, cancellation);
            cancellation.ThrowIfCancellationRequested();
            board.Post(state);
        }
        catch (OperationCanceledException)
        {
        }
    }

    private WatchState Run(FileLook look, CancellationToken cancellation)
    {
        if (look.Bytes is not { } bytes)
            return Refused(look, $"{path}: {look.Fault}; the watch goes on and shows it when it is back\n");
        try
        {
            var source = ReportSource.Read(path, bytes, []);
            var diagnostics = DiagnosticRenderer.Render(source.Diagnostics);
            if (source.Scenario is null)
                return Refused(look, diagnostics + (source.Refusal is { } refusal ? refusal + "\n" : ""));
            var facts = ReportFacts.Of(source, day: null, cancellation);
            told.Write(diagnostics);
            foreach (var leftOut in LeftOut.Of(facts.Cases))
                told.WriteLine(leftOut.Told);
            told.WriteLine($"{path}: {Verdict(facts)}");
            return WatchState.Answered(look.Version, facts, diagnostics);
        }
        catch (BrokenOffException exception)
        {
            return Refused(look, exception.Message + "\n");
        }
        catch (Exception exception) when (exception is not OperationCanceledException)
        {
            return Refused(look, $"internal error, please report it: {exception.GetType().Name}: {exception.Message.ReplaceLineEndings(" ")}\n");
        }
    }

    private WatchState Refused(FileLook look, string fault)
    {
        told.Write(fault);
        return board.State.Refused(look.Version, Name, fault);
    }

    private static string Verdict(ReviewFacts facts) => facts.Cases.Count(result => result.Verdict == Studies.FailureCases.Verdict.Fail) switch
    {
        0 => "no requirement is missed",
        var missed => $"some requirement is NOT met in {missed} of {facts.Cases.Length} failure cases",
    };
}
