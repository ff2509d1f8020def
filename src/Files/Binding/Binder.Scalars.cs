using System.Globalization;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Files.Values;
using Runnel.Files.Yaml;

namespace Runnel.Files.Binding;

/// <summary>Single values and lists of them.</summary>
internal sealed partial class Binder
{
    private bool Scalar(InputInfo input, string text, Site at, Site owner, out object? value, out Trouble? trouble)
    {
        value = null;
        var origin = new Origin(at.Path, owner.Label(input.Input.Label));
        switch (input.Kind)
        {
            case InputKind.Quantity:
                var found = QuantityText.TryRead(text, Wanted(input), Context, out var quantity, out trouble);
                if (found && input.Key == "life" && quantity.Unit == Units.HourUnit)
                {
                    trouble = new("hours of running, or hours on the calendar? A life is counted on the calendar",
                        input.Property.ReflectedType == typeof(Lamp) ? $"write life hours: {text.Trim()} for hours lit" : "write it in years or months");
                    return false;
                }
                return Boxed(found, quantity.Unit is null ? null : quantity.From(origin), out value);
            case InputKind.Text:
                trouble = text.Trim().Length == 0 ? new("nothing is written between the quotation marks", "write it, or delete the line") : null;
                value = text;
                return trouble is null;
            case InputKind.Word:
                return WordText.TryRead(text, input.Element, out value, out trouble);
            case InputKind.Whole:
                return Whole(input, text, out value, out trouble);
            case InputKind.YesNo:
                return Boxed(TimeText.TryYesNo(text, out var yes, out trouble), yes, out value);
            case InputKind.Clock:
                return Boxed(TimeText.TryClock(text, out var time, out trouble), time, out value);
            case InputKind.Date:
                return Boxed(TimeText.TryDate(text, out var date, out trouble), date, out value);
            case InputKind.Day:
                return Boxed(TimeText.TryDay(text, out var day, out trouble), day, out value);
            case InputKind.Hours:
                return Boxed(TimeText.TryHours(text, out var span, out trouble), span, out value);
            case InputKind.Extent:
                return Boxed(ShapeText.TryExtent(text, Context, origin, out var extent, out trouble), extent, out value);
            case InputKind.Shape:
                return Boxed(ShapeText.TryShape(text, Context, origin, out var shape, out trouble), shape, out value);
            case InputKind.Insulation:
                return Boxed(ShapeText.TryInsulation(text, Context, origin, out var insulation, out trouble), insulation, out value);
            case InputKind.PipeSize:
                return Boxed(ShapeText.TryPipeSize(text, Context, out var size, out trouble), size, out value);
            case InputKind.Drain:
                return Boxed(DrainText.TryRead(text, Context, origin, out var drain, out trouble), drain, out value);
            default:
                throw new InvalidOperationException($"{input.Kind} is no single value");
        }
    }

    private static bool Boxed(bool found, object? read, out object? value)
    {
        value = found ? read : null;
        return found;
    }

    private static bool Whole(InputInfo input, string text, out object? value, out Trouble? trouble)
    {
        value = null;
        if (!int.TryParse(text.Trim(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number))
        {
            trouble = new("a whole number was expected", Example(input));
            return false;
        }
        if (number < input.Input.Min || number > input.Input.Max)
        {
            trouble = input.Key == "runnel"
                ? new("the file is written for another format of Runnel", "this Runnel reads format 1; write runnel: 1 if the file is in it")
                : new($"that is outside {input.Input.Min} to {input.Input.Max}", "check the number");
            return false;
        }
        (value, trouble) = (number, null);
        return true;
    }

    private IReadOnlyList<Estimate>? Quantities(InputInfo input, Node node, Site at, Site owner)
    {
        var label = owner.Label(input.Input.Label);
        if (node is ScalarNode one)
        {
            return Quantity(input, one, at, label) is { } estimate ? [estimate] : null;
        }
        if (node is not ListNode list)
        {
            Unexpected(node, at, "one value, or twelve from January,", input);
            return null;
        }
        if (list.Items.Count is not (1 or 12))
        {
            Error(list.Start, at, "", new($"{list.Items.Count} values stand here, one or twelve (from January) were expected", input.Input.Example is null ? "" : Example(input)));
        }
        var values = new List<Estimate>();
        for (var i = 0; i < list.Items.Count; i++)
        {
            var item = at.Item(i, list.Items[i].Start, at.About);
            if (list.Items[i] is not ScalarNode scalar)
            {
                Unexpected(list.Items[i], item, "one value", input);
            }
            else if (Quantity(input, scalar, item, list.Items.Count == 12 ? $"{label}, {CalendarDay.MonthNames[i]}" : label) is { } estimate)
            {
                values.Add(estimate);
            }
        }
        return values;
    }

    private Estimate? Quantity(InputInfo input, ScalarNode node, Site at, string label)
    {
        if (QuantityText.TryRead(node.Value, Wanted(input), Context, out var quantity, out var trouble))
        {
            return quantity.From(new(at.Path, label));
        }
        Error(node.Start, at, node.Value, trouble!);
        return null;
    }

    private Dictionary<string, Estimate> QuantityMap(InputInfo input, MapNode map, Site at)
    {
        Duplicates(map, at);
        var values = new Dictionary<string, Estimate>(StringComparer.Ordinal);
        foreach (var (key, node) in map.Entries)
        {
            var item = at.Below(key.Value, node.Start, at.About);
            if (input.Key == "exchange" && !Engine.Money.Currency.IsKnown(key.Value))
            {
                Error(key.Start, at, key.Value, CurrencyTrouble(key.Value));
            }
            if (node is not ScalarNode scalar)
            {
                Unexpected(node, item, "one value", input);
            }
            else if (Quantity(input, scalar, item, $"{input.Input.Label}, {key.Value}") is { } estimate)
            {
                values[key.Value] = estimate;
            }
        }
        return values;
    }

    /// <summary>What is wrong with a code that is no currency.</summary>
    public static Trouble CurrencyTrouble(string code) => new("that is no currency code of ISO 4217",
        code.Length > 0 && Errors.Nearest.Of(code, Engine.Money.Currency.Codes) is { } near ? $"write three capitals; did you mean {near}?" : "write three capitals, such as EUR or USD");

    private List<CurvePoint>? Curve(InputInfo input, Node node, Site at, Site owner)
    {
        if (node is not ListNode list)
        {
            Unexpected(node, at, "a list of points", input);
            return null;
        }
        var points = new List<CurvePoint>();
        for (var i = 0; i < list.Items.Count; i++)
        {
            var item = at.Item(i, list.Items[i].Start, at.About);
            if (list.Items[i] is not ScalarNode scalar)
            {
                Unexpected(list.Items[i], item, "one point", input);
            }
            else if (ShapeText.TryCurvePoint(scalar.Value, Context, new(item.Path, $"{owner.Label(input.Input.Label)}, point {i + 1}"), out var point, out var trouble))
            {
                points.Add(point!);
            }
            else
            {
                Error(scalar.Start, item, scalar.Value, trouble!);
            }
        }
        if (list.Items.Count < 2)
        {
            Error(list.Start, at, "", new("a curve needs two points at least", Example(input)));
        }
        return points;
    }

    private List<string>? Texts(InputInfo input, Node node, Site at)
    {
        IReadOnlyList<Node> items = node is ListNode list ? list.Items : [node];
        var texts = new List<string>();
        for (var i = 0; i < items.Count; i++)
        {
            if (items[i] is not ScalarNode { IsEmpty: false } scalar)
            {
                Unexpected(items[i], at, "one name, or a list of names in [ ],", input);
                continue;
            }
            texts.Add(scalar.Value);
            if (Refers(input) is { } target)
            {
                references.Add(new(target, scalar.Value, scalar.Start, at));
            }
        }
        if (node is ListNode && texts.Count == 0 && input.Input.Required)
        {
            Error(node.Start, at, "", new("the list is empty", Example(input)));
        }
        return texts;
    }

    private static string? Refers(InputInfo input) => (input.Property.DeclaringType!.Name, input.Key) switch
    {
        (nameof(Pipe), "from" or "to") => "vessels",
        (nameof(Pipe), "pumped by") => "pumps",
        (nameof(Lamp), "over") => "vessels",
        (nameof(Lumber), "carries") => "vessels",
        (nameof(Crop), "in") => "vessels",
        (nameof(FishBatch), "lives in") => "vessels",
        _ => null,
    };
}

/// <summary>A name that must exist under a key of the plan.</summary>
internal sealed record Reference(string Target, string Name, Spot At, Site Site);
