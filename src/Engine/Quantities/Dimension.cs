namespace Runnel.Engine.Quantities;

/// <summary>
/// What kind of thing a number measures: exponents of mass, length, time, temperature, amount, light and money,
/// and a basis that keeps apart what shares a unit ("as N" from "as NH3", a temperature from a temperature difference).
/// </summary>
/// <param name="Mass">Exponent of kilogram.</param>
/// <param name="Length">Exponent of metre.</param>
/// <param name="Time">Exponent of second.</param>
/// <param name="Temperature">Exponent of kelvin.</param>
/// <param name="Amount">Exponent of mole (of photons).</param>
/// <param name="Light">Exponent of lumen.</param>
/// <param name="Money">Exponent of the plan's currency.</param>
/// <param name="Basis">Empty, or what the number is counted as.</param>
/// <param name="Current">Exponent of ampere.</param>
public readonly record struct Dimension(
    sbyte Mass = 0, sbyte Length = 0, sbyte Time = 0, sbyte Temperature = 0, sbyte Amount = 0, sbyte Light = 0, sbyte Money = 0,
    string? Basis = null, sbyte Current = 0)
{
    /// <summary>Basis of a temperature on a scale, as opposed to a temperature difference.</summary>
    public const string PointBasis = "on the Celsius scale";

    /// <summary>A pure number: a count, a share, a ratio.</summary>
    public static readonly Dimension None;

    /// <summary>A temperature on a scale: may be subtracted from another, never multiplied.</summary>
    public bool IsPoint => Basis == PointBasis;

    public static Dimension operator *(Dimension a, Dimension b) => new(
        (sbyte)(a.Mass + b.Mass), (sbyte)(a.Length + b.Length), (sbyte)(a.Time + b.Time), (sbyte)(a.Temperature + b.Temperature),
        (sbyte)(a.Amount + b.Amount), (sbyte)(a.Light + b.Light), (sbyte)(a.Money + b.Money), Join(a, b, dividing: false),
        (sbyte)(a.Current + b.Current));

    public static Dimension operator /(Dimension a, Dimension b) => new(
        (sbyte)(a.Mass - b.Mass), (sbyte)(a.Length - b.Length), (sbyte)(a.Time - b.Time), (sbyte)(a.Temperature - b.Temperature),
        (sbyte)(a.Amount - b.Amount), (sbyte)(a.Light - b.Light), (sbyte)(a.Money - b.Money), Join(a, b, dividing: true),
        (sbyte)(a.Current - b.Current));

    public static Dimension Multiply(Dimension left, Dimension right) => left * right;

    public static Dimension Divide(Dimension left, Dimension right) => left / right;

    /// <summary>Two things of one dimension add up; a temperature takes a difference.</summary>
    /// <exception cref="UnitMismatchException">The two do not add up.</exception>
    public static Dimension Add(Dimension a, Dimension b)
    {
        if (a.IsPoint && b.IsPoint)
        {
            throw new UnitMismatchException("two temperatures cannot be added; add a temperature difference");
        }
        if (a.IsPoint || b.IsPoint)
        {
            var other = a.IsPoint ? b : a;
            return other == (a.IsPoint ? a : b) with { Basis = null } ? (a.IsPoint ? a : b) : throw Mismatch("add", a, b);
        }
        return a == b ? a : throw Mismatch("add", a, b);
    }

    /// <summary>The dimension of a minus b: two temperatures give a temperature difference.</summary>
    /// <exception cref="UnitMismatchException">The two cannot be subtracted.</exception>
    public static Dimension Subtract(Dimension a, Dimension b)
    {
        if (a.IsPoint && b.IsPoint)
        {
            return a with { Basis = null };
        }
        if (a.IsPoint)
        {
            return b == a with { Basis = null } ? a : throw Mismatch("subtract", a, b);
        }
        return a == b ? a : throw Mismatch("subtract", a, b);
    }

    /// <inheritdoc />
    public override string ToString()
    {
        var parts = new List<string>();
        void Say(sbyte exponent, string symbol)
        {
            if (exponent != 0)
            {
                parts.Add(exponent == 1 ? symbol : $"{symbol}^{exponent}");
            }
        }
        Say(Money, "money");
        Say(Mass, "kg");
        Say(Length, "m");
        Say(Time, "s");
        Say(Temperature, "K");
        Say(Amount, "mol");
        Say(Light, "lm");
        Say(Current, "A");
        var text = parts.Count == 0 ? "a number" : string.Join('·', parts);
        return Basis is null ? text : $"{text} {Basis}";
    }

    private static string? Join(Dimension a, Dimension b, bool dividing)
    {
        if (a.IsPoint || b.IsPoint)
        {
            throw new UnitMismatchException("a temperature cannot be multiplied or divided; take a temperature difference first");
        }
        if (dividing && a.Basis == b.Basis)
        {
            return null;
        }
        if (a.Basis is not null && b.Basis is not null)
        {
            throw new UnitMismatchException($"a figure {a.Basis} cannot meet one {b.Basis}; convert one of them first");
        }
        return a.Basis ?? b.Basis;
    }

    private static UnitMismatchException Mismatch(string verb, Dimension a, Dimension b) =>
        new($"cannot {verb} {a} and {b}");
}

/// <summary>Two figures met whose units do not fit: a programmer's error, found at the first run.</summary>
public sealed class UnitMismatchException : InvalidOperationException
{
    public UnitMismatchException()
    {
    }

    public UnitMismatchException(string message)
        : base(message)
    {
    }

    public UnitMismatchException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
