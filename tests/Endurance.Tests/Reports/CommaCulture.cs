using System.Globalization;

namespace Endurance.Tests.Reports;

/// <summary>Runs something under a culture that writes one half as 0,5 and groups thousands with a point, as German does.</summary>
internal static class CommaCulture
{
    public static T Run<T>(Func<T> act)
    {
        var before = CultureInfo.CurrentCulture;
        // Built by hand, since the program and its tests run without the culture data of the machine.
        var german = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        german.NumberFormat.NumberDecimalSeparator = ",";
        german.NumberFormat.NumberGroupSeparator = ".";
        german.NumberFormat.NegativeSign = "−";
        CultureInfo.CurrentCulture = german;
        try
        {
            return act();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
