using System.Globalization;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Files.Values;

namespace Runnel.Files;

/// <summary>Writes single values as a plan holds them.</summary>
public static class ValueText
{
    /// <summary>A number with its range and unit: "30 to 50 EUR, likely 35 EUR".</summary>
    public static string Write(Estimate estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        var (text, likely) = Parts(estimate);
        return likely is null ? text : $"{text}, likely {likely}";
    }

    internal static (string Text, string? Likely) Parts(Estimate estimate)
    {
        var unit = estimate.Unit;
        if (!estimate.IsRange)
        {
            return (With(Number(estimate.Likely, unit), unit), null);
        }
        var middle = (estimate.Low + estimate.High) / 2;
        var told = Math.Abs(estimate.Likely - middle) > 1e-9 * (estimate.High - estimate.Low);
        return (With($"{Number(estimate.Low, unit)} to {Number(estimate.High, unit)}", unit), told ? With(Number(estimate.Likely, unit), unit) : null);
    }

    internal static string Of(object value) => value switch
    {
        Estimate estimate => Write(estimate),
        string text => text,
        bool yes => yes ? "yes" : "no",
        int number => number.ToString(CultureInfo.InvariantCulture),
        TimeOnly time => time.ToString("HH:mm", CultureInfo.InvariantCulture),
        DateOnly date => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        CalendarDay day => day.ToString(),
        HourSpan span => $"{Of(span.From)} to {Of(span.To)}",
        Extent extent => $"{Write(extent.Length)} x {Write(extent.Width)}",
        Shape shape => shape.Text,
        Insulation insulation => insulation.Text,
        PipeSize size => size.Text,
        DrainSpec drain => drain.Text,
        Enum word => WordText.Write(word),
        _ => throw new InvalidOperationException($"{value.GetType().Name} is no single value of a plan"),
    };

    // Twelve digits: a value read back and written again gives the same text, whatever its last bits.
    private static string Number(double si, Unit unit)
    {
        var value = unit.FromSi(si);
        value = unit.Offset != 0 ? Math.Round(value, 9) : value;
        var text = value.ToString("G12", CultureInfo.InvariantCulture);
        if (text.Contains('E', StringComparison.Ordinal) && Math.Abs(value) is >= 1e-7 and < 1e15)
        {
            text = decimal.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture).ToString(CultureInfo.InvariantCulture);
        }
        return text == "-0" ? "0" : text;
    }

    private static string With(string number, Unit unit)
    {
        var symbol = unit.Symbol == "°" ? "" : Hints.Spelled(unit);
        return symbol.Length == 0 ? number : $"{number} {symbol}";
    }
}
