using Endurance.Quantities;

namespace Endurance.Studies.LoadAnalysis;

/// <summary>The familiar form: what the capacity leaves for the cruise after recognition and landing have taken theirs.</summary>
/// <remarks>t_cruise = (C x 60 - I_before t_before - I_land t_land)/I_shed; total = t_before + t_cruise + t_land. It knows nothing of hour rates, volts or minimums.</remarks>
/// <param name="Usable">Capacity after every derating.</param>
/// <param name="Before">Current until the pilot has shed; zero or more.</param>
/// <param name="TimeBefore">From the failure to then.</param>
/// <param name="Shed">Current in cruise; above zero.</param>
/// <param name="Landing">Current for the landing.</param>
/// <param name="TimeLanding">From switching the landing loads on to the ground.</param>
public sealed record AmpMinutes(Charge Usable, Current Before, Duration TimeBefore, Current Shed, Current Landing, Duration TimeLanding)
{
    /// <summary><see langword="null"/>: recognition and landing together take more than there is.</summary>
    public Duration? Cruise
    {
        get
        {
            var left = Usable - (Before * TimeBefore) - (Landing * TimeLanding);
            return left < Charge.Zero ? null : Duration.FromSeconds(left.Coulombs / Shed.Amperes);
        }
    }

    /// <summary><see langword="null"/> where <see cref="Cruise"/> is.</summary>
    public Duration? Total => Cruise is { } cruise ? TimeBefore + cruise + TimeLanding : null;
}
