using Runnel.Engine.Quantities;

namespace Runnel.Files.Values;

/// <summary>A quantity as read: low, likely and high in SI (°C for temperatures) and the unit it was written in.</summary>
public readonly record struct Quantity(double Low, double Likely, double High, Unit Unit)
{
    /// <summary>With where it comes from.</summary>
    public Estimate From(Origin origin) => new(Low, Likely, High, Unit, origin);
}

/// <summary>What a quantity should be.</summary>
/// <param name="Unit">Symbol of the unit of a bare number, as in an input's description; null for any count, length, weight, area or volume.</param>
/// <param name="Words">Key and label of the input: a day or a month named there need not be written again.</param>
public sealed record Wanted(string? Unit, string Words = "")
{
    /// <summary>Least and greatest sensible value, in the unit.</summary>
    public double Min { get; init; } = double.NegativeInfinity;

    public double Max { get; init; } = double.PositiveInfinity;
}

/// <summary>Reads quantities: "55 gal", "8 ft 2 in", "15 to 20 °C", "30 to 50 USD, likely 35", "14 h a day".</summary>
public static class QuantityText
{
    private const int LongestText = 200;

    /// <summary>Reads a quantity; on failure says what is wrong.</summary>
    public static bool TryRead(string text, Wanted wanted, ValueContext context, out Quantity quantity, out Trouble? trouble)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(wanted);
        ArgumentNullException.ThrowIfNull(context);
        quantity = default;
        var asked = wanted.Unit is null ? null : UnitText.OfSymbol(wanted.Unit, context.Currency);
        if (text.Length > LongestText)
        {
            trouble = new("that is too long for a quantity", Hints.Example(asked, wanted));
            return false;
        }
        var ends = Ends.Split(text.Trim());
        if (!Read(ends.Low, asked, wanted, context, out var low, out trouble))
        {
            return false;
        }
        Piece? high = null, likely = null;
        if (ends.High is not null)
        {
            if (!Read(ends.High, asked, wanted, context, out var second, out trouble))
            {
                return false;
            }
            high = second;
        }
        if (ends.Likely is not null)
        {
            if (!Read(ends.Likely, asked, wanted, context, out var third, out trouble))
            {
                return false;
            }
            likely = third;
        }
        var shared = low.Unit ?? high?.Unit ?? likely?.Unit;
        var lowUnit = low.Unit ?? shared;
        if (!Fit(lowUnit, asked, wanted, context, text, low.Value, out var lowFit, out trouble) ||
            !Fit(high?.Unit ?? shared, asked, wanted, context, text, low.Value, out var highFit, out trouble) ||
            !Fit(likely?.Unit ?? shared, asked, wanted, context, text, low.Value, out var likelyFit, out trouble))
        {
            return false;
        }
        var a = lowFit.ToSi(low.Value);
        var b = high is { } h ? highFit.ToSi(h.Value) : a;
        var c = likely is { } l ? likelyFit.ToSi(l.Value) : high is null ? a : (a + b) / 2;
        if (lowFit.Dimension != highFit.Dimension || lowFit.Dimension != likelyFit.Dimension)
        {
            trouble = new("the ends of that range measure different things", "write both in one unit");
            return false;
        }
        if (context.KeepsCurrency && (PriceText.CurrencyOf(lowFit, context) != PriceText.CurrencyOf(highFit, context) ||
            PriceText.CurrencyOf(lowFit, context) != PriceText.CurrencyOf(likelyFit, context)))
        {
            trouble = new("that range is in two currencies", "write all of it in one");
            return false;
        }
        trouble = Check(a, c, b, likely is not null, asked, wanted, text);
        if (trouble is not null)
        {
            return false;
        }
        quantity = new(a, c, b, Hints.Shown(lowFit, asked));
        return true;
    }

    private static Trouble? Check(double low, double likely, double high, bool told, Unit? asked, Wanted wanted, string text)
    {
        if (!double.IsFinite(low) || !double.IsFinite(likely) || !double.IsFinite(high))
        {
            return new("that number is too large");
        }
        if (low > high)
        {
            return new("that range runs from high to low", "write the smaller value first");
        }
        if (told && (likely < low || likely > high))
        {
            return new("the likely value lies outside the range", "put it between the two ends");
        }
        if (asked is null)
        {
            return low < 0 ? new("that is less than nothing", "write how much is needed") : null;
        }
        // A hair of tolerance, so that 212 °F is not above 100 °C by rounding.
        var hair = 1e-9 * Math.Max(Math.Abs(wanted.Min), Math.Abs(wanted.Max));
        hair = double.IsFinite(hair) ? hair : 1e-9 * Math.Max(1, Math.Abs(high));
        if (asked.FromSi(low) < wanted.Min - hair)
        {
            return Hints.Outside("less than", wanted.Min, asked, text);
        }
        return asked.FromSi(high) > wanted.Max + hair ? Hints.Outside("more than", wanted.Max, asked, text) : null;
    }

    private static bool Fit(Unit? unit, Unit? asked, Wanted wanted, ValueContext context, string text, double number, out Unit fit, out Trouble? trouble)
    {
        trouble = null;
        fit = unit ?? asked ?? Units.One;
        if (unit is null)
        {
            if (asked is { Dimension.IsPoint: true } && !context.BareTemperatures)
            {
                trouble = new("degrees of which scale? This plan is in US units", $"write {Hints.Number(number)} °F or {Hints.Number(number)} °C");
                return false;
            }
            return true;
        }
        if (asked is null)
        {
            var d = unit.Dimension;
            if (d == Dimension.None || d == Units.Metre.Dimension || d == Units.Kilogram.Dimension || d == Units.SquareMetre.Dimension || d == Units.CubicMetre.Dimension)
            {
                return true;
            }
            trouble = new($"that is {DimensionNames.Of(d)}; a count, a length, a weight, an area or a volume was expected", "write it like 2, 12 m, 40 g or 50 L");
            return false;
        }
        if (unit.Dimension == asked.Dimension)
        {
            return true;
        }
        if (asked.Dimension.IsPoint && unit == Units.Kelvin)
        {
            fit = UnitTable.KelvinScale;
            return true;
        }
        if (Hints.Implied(unit, asked, wanted.Words) is { } implied)
        {
            fit = implied;
            return true;
        }
        trouble = Hints.Mismatch(unit, asked, number, wanted);
        return false;
    }

    private static bool Read(string text, Unit? asked, Wanted wanted, ValueContext context, out Piece piece, out Trouble? trouble)
    {
        if (Piece.TryRead(text, asked, wanted, context, out piece, out trouble))
        {
            return true;
        }
        if (trouble is { Mend.Length: 0 })
        {
            trouble = trouble with { Mend = Hints.Example(asked, wanted) };
        }
        return false;
    }
}
