using Endurance.Quantities;

namespace Endurance.Scenarios;

/// <summary>A low-voltage warning that has come on and been understood.</summary>
/// <param name="Warning">Name of the warning.</param>
/// <param name="RecognisedAfter">From the warning to the action; zero or more.</param>
public sealed record WhenWarned(string Warning, Duration RecognisedAfter) : Trigger;
