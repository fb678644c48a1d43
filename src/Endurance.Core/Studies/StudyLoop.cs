using System.Runtime.ExceptionServices;

namespace Endurance.Studies;

/// <summary>Runs the independent parts of a study side by side.</summary>
internal static class StudyLoop
{
    /// <summary>Calls an action for 0 to <paramref name="count"/> - 1 on as many threads as there are processors; throws the first failure as it was.</summary>
    public static void For(int count, CancellationToken cancellation, Action<int> action)
    {
        try
        {
            Parallel.For(0, count, new ParallelOptions { CancellationToken = cancellation }, action);
        }
        catch (AggregateException failures)
        {
            ExceptionDispatchInfo.Throw(failures.InnerExceptions[0]);
        }
    }
}
