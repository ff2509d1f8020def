namespace Runnel.Engine.Quantities;

/// <summary>The months of the year of 365 days that every part computes with: 29 February is left out.</summary>
public static class YearCalendar
{
    /// <summary>Days of the year.</summary>
    public const int Days = 365;

    /// <summary>Months of the year.</summary>
    public const int Months = 12;

    /// <summary>Days of each month, 0 for January.</summary>
    public static ReadOnlySpan<int> Length => [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    /// <summary>Days before each month, 0 for January.</summary>
    public static ReadOnlySpan<int> Start => [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];
}
