using Runnel.App;
using Runnel.Engine.Assess;
using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;
using Runnel.Files;
using Runnel.Files.Values;

namespace Runnel.Host.Commands;

/// <summary>One input of a quick sum with the value it got.</summary>
internal sealed record SumInput(FormulaInput Input, Figure Figure, bool Assumed);

/// <summary>A rule with a value for each input, and what it gives.</summary>
internal sealed record QuickSum(Formula Formula, IReadOnlyList<SumInput> Inputs, Figure Result)
{
    /// <summary>Reads "name=value" for each input and computes.</summary>
    /// <exception cref="RefusedException">Something cannot be read, is missing or lies outside the rule's range: all of it is in it.</exception>
    public static QuickSum Read(Formula formula, IReadOnlyList<string> written, Style style)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(written);
        ArgumentNullException.ThrowIfNull(style);
        var errors = new List<PlanError>();
        var values = new Dictionary<string, Figure>(StringComparer.Ordinal);
        foreach (var (name, text) in Pairs(written, formula, errors))
        {
            if (Find(formula, name) is not { } input)
            {
                var near = Names.Nearest(name, formula.Inputs.Select(i => i.Id));
                Refuse(name, text, $"{formula.Id} has no input of that name",
                    near.Count > 0 ? $"perhaps {string.Join(", ", near)}" : $"it takes {string.Join(", ", formula.Inputs.Select(i => i.Id))}");
            }
            else if (values.ContainsKey(input.Id))
            {
                Refuse(input.Id, text, "it is given twice", "write it once");
            }
            else if (Value(input, text, style, Refuse) is { } figure)
            {
                values.Add(input.Id, figure);
            }
            else
            {
                // Refused already: not to be called missing as well.
                values.Add(input.Id, Figure.Constant(input.Min, input.Unit, input.Label, Source.Definition("stands in for a refused value")));
            }
        }
        foreach (var input in formula.Inputs.Where(i => i.Default is null && !values.ContainsKey(i.Id)))
        {
            Refuse(input.Id, "", $"{input.Label.ToLowerInvariant()} is missing", $"write {input.Id}={Example(input)}");
        }
        if (errors.Count > 0)
        {
            throw new RefusedException(errors);
        }
        var inputs = formula.Inputs.Select(i => values.TryGetValue(i.Id, out var given)
            ? new SumInput(i, given, Assumed: false)
            : new SumInput(i, Figure.Given(Estimate.Of(i.Default!.Value, i.Unit, new Origin($"sum/{i.Id}", i.Label, OriginKind.Default, i.DefaultSource))), Assumed: true)).ToList();
        var result = formula.Apply([.. inputs.Select(i => i.Figure)]).As(formula.Id, formula.Output.Label, formula.Output.Unit);
        return new(formula, inputs, result);

        void Refuse(string where, string read, string problem, string mend) => errors.Add(new("", 0, 0, where, read, problem, mend));
    }

    /// <summary>Names of rules that the writer may have meant: near as a whole, or in one of their words.</summary>
    public static IReadOnlyList<string> Nearest(string wanted)
    {
        const int most = 4;
        var whole = Names.Nearest(wanted, Formulary.All.Select(f => f.Id), most);
        return whole.Count > 0
            ? whole
            : [.. Formulary.All
                .Where(f => Names.Nearest(wanted, $"{f.Id.Replace('-', ' ')} {f.Name}".Split(' ').Where(w => w.Length > 2), 1).Count > 0)
                .Select(f => f.Id).Take(most)];
    }

    /// <summary>A value that the rule takes, as it would be typed.</summary>
    public static string Example(FormulaInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var value = input.Default ?? Sensible(input);
        var unit = input.Unit.Symbol switch
        {
            "°C" => "C",
            _ when IsCount(input.Unit) => "",
            "m²" => "m2",
            "m³" => "m3",
            var symbol => symbol,
        };
        // What a shell would take apart is left as a bare number: it is in the input's unit then.
        return Style.Number(value, Units.One).Replace(",", "", StringComparison.Ordinal) + (unit.All(char.IsAsciiLetterOrDigit) ? unit : "");
    }

    // Plain numbers, whatever they count: fish, plants, a pH.
    private static bool IsCount(Unit unit) => unit.Dimension == Dimension.None && unit.Factor is 1;

    private static double Sensible(FormulaInput input)
    {
        foreach (var candidate in (ReadOnlySpan<double>)[20, 7, 2, 0.5, 100, 0.05, 1000])
        {
            if (candidate > input.Min && candidate < input.Max)
            {
                return candidate;
            }
        }
        return (input.Min + input.Max) / 2;
    }

    // A shell splits temperature=20 C in two: what has no name belongs to the value before it.
    private static List<(string Name, string Text)> Pairs(IReadOnlyList<string> written, Formula formula, List<PlanError> errors)
    {
        var pairs = new List<(string Name, string Text)>();
        foreach (var part in written)
        {
            var equals = part.IndexOf('=', StringComparison.Ordinal);
            if (equals > 0)
            {
                pairs.Add((part[..equals].Trim(), part[(equals + 1)..].Trim()));
            }
            else if (pairs.Count > 0 && equals < 0)
            {
                pairs[^1] = (pairs[^1].Name, $"{pairs[^1].Text} {part.Trim()}");
            }
            else
            {
                errors.Add(new("", 0, 0, "VALUES", part, "a value needs its name", $"write {formula.Inputs[0].Id}={Example(formula.Inputs[0])}"));
            }
        }
        return pairs;
    }

    /// <summary>The input of that name, or the only one that starts like it.</summary>
    private static FormulaInput? Find(Formula formula, string name)
    {
        var exact = formula.Inputs.FirstOrDefault(i => i.Id.Equals(name, StringComparison.OrdinalIgnoreCase));
        if (exact is not null || name.Length < 2)
        {
            return exact;
        }
        var like = formula.Inputs.Where(i => i.Id.StartsWith(name, StringComparison.OrdinalIgnoreCase)).ToList();
        return like.Count == 1 ? like[0] : null;
    }

    private static Figure? Value(FormulaInput input, string text, Style style, Action<string, string, string, string> refuse)
    {
        if (!QuantityText.TryRead(text, new Wanted(IsCount(input.Unit) ? "" : input.Unit.Symbol, input.Label), new ValueContext(""), out var quantity, out var trouble))
        {
            refuse(input.Id, text, trouble!.Problem, trouble.Mend);
            return null;
        }
        if (quantity.High > quantity.Low)
        {
            refuse(input.Id, text, "a quick sum takes one number, not a range", "write one value; ranges belong in a plan");
            return null;
        }
        var value = input.Unit.FromSi(quantity.Likely);
        var slack = 1e-9 * Math.Max(1, Math.Abs(value));
        if (value < input.Min - slack || value > input.Max + slack)
        {
            var own = style.UnitOf(quantity.Unit) == style.UnitOf(input.Unit) ? "" : $"that is {style.Write(Amount.Of(value, input.Unit))}; ";
            refuse(input.Id, text, $"{own}the rule does not hold there",
                $"it holds from {style.Write(Amount.Of(input.Min, input.Unit))} to {style.Write(Amount.Of(input.Max, input.Unit))}");
            return null;
        }
        return Figure.Given(quantity.From(new Origin($"sum/{input.Id}", input.Label)));
    }
}
