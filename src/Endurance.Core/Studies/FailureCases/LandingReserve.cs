using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Studies.FailureCases;

/// <summary>How long a flight may go on after a failure and still be landed with power.</summary>
/// <param name="Landing">What the approach and landing add.</param>
/// <param name="Latest">Latest instant to begin the approach so that nothing required is lost before the ground. <see langword="null"/>: too late already at zero, or not reached within the horizon; see <paramref name="IsEverCovered"/>.</param>
/// <param name="IsEverCovered">An approach begun at zero reaches the ground with everything required.</param>
public sealed record LandingReserve(Landing Landing, Duration? Latest, bool IsEverCovered);
