namespace Endurance.Cli.Watching;

/// <summary>Holds the newest state for all who ask.</summary>
internal sealed class WatchBoard(WatchState first)
{
    private volatile Posted _newest = new(first);

    public WatchState State => _newest.State;

    public void Post(WatchState state)
    {
        var before = _newest;
        _newest = new Posted(state);
        before.Replaced.SetResult();
    }

    /// <summary>Ends when another state than the given one is posted.</summary>
    public Task Replaced(WatchState state)
    {
        var newest = _newest;
        return ReferenceEquals(newest.State, state) ? newest.Replaced.Task : Task.CompletedTask;
    }

    private sealed record Posted(WatchState State)
    {
        public TaskCompletionSource Replaced { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);
    }
}
