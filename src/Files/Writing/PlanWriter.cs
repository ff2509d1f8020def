using System.Collections;
using System.Text;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Files.Binding;
using Runnel.Files.Edit;

namespace Runnel.Files;

/// <summary>Writes a plan as text, always in the same way: keys in the order of the format, what has its default left out.</summary>
/// <remarks>Numbers keep twelve significant digits. Comments of a file that a plan was read from are not in the plan: change a file with <see cref="PlanFile.With"/>.</remarks>
public static class PlanWriter
{
    /// <summary>The text of a plan.</summary>
    public static string Write(LoopPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var text = new StringBuilder();
        Part(text, plan, PartInfo.Of<LoopPlan>(), 0, plan);
        return text.ToString();
    }

    private static void Part(StringBuilder text, object part, PartInfo info, int indent, LoopPlan plan)
    {
        var like = part is Vessel { Like: { } other } && plan.Vessels.TryGetValue(other, out var original) ? original : null;
        foreach (var input in info.Inputs)
        {
            var value = input.Property.GetValue(part);
            if (value is null || like is not null && input.Key != "like" && Equals(value, input.Property.GetValue(like)))
            {
                continue;
            }
            if (like is null && IsDefault(input, value))
            {
                continue;
            }
            Input(text, input, value, indent, plan);
        }
    }

    private static void Input(StringBuilder text, InputInfo input, object value, int indent, LoopPlan plan)
    {
        switch (input.Kind)
        {
            case InputKind.Part:
                var inner = new StringBuilder();
                Part(inner, value, PartInfo.Of(input.Element), indent + 2, plan);
                if (inner.Length > 0 || input.Optional)
                {
                    Key(text, indent, input.Key).Append(inner.Length == 0 ? " {}" : "").Append('\n').Append(inner);
                }
                break;
            case InputKind.PartMap:
                Map(text, input, (IEnumerable)value, indent, plan);
                break;
            case InputKind.QuantityMap:
                Amounts(text, input, (IReadOnlyDictionary<string, Estimate>)value, indent);
                break;
            case InputKind.PartList:
                List(text, input, (IEnumerable)value, indent, plan);
                break;
            case InputKind.Quantities:
                Flow(text, input, [.. ((IReadOnlyList<Estimate>)value).Select(ValueText.Write)], indent);
                break;
            case InputKind.Curve:
                Flow(text, input, [.. ((IReadOnlyList<CurvePoint>)value).Select(p => $"{ValueText.Write(p.Head)} at {ValueText.Write(p.Flow)}")], indent);
                break;
            case InputKind.Texts:
                Flow(text, input, (IReadOnlyList<string>)value, indent);
                break;
            default:
                Scalar(Key(text, indent, input.Key), ValueText.Of(value));
                break;
        }
    }

    private static void Map(StringBuilder text, InputInfo input, IEnumerable entries, int indent, LoopPlan plan)
    {
        var begun = false;
        var info = PartInfo.Of(input.Element);
        foreach (var entry in entries)
        {
            if (!begun)
            {
                Key(text, indent, input.Key).Append('\n');
                begun = true;
            }
            var (name, part) = Pair(entry);
            Key(text, indent + 2, name);
            if (part is Price price && PriceWriter.Short(price, plan.Currency) is { } brief)
            {
                Scalar(text, brief);
                continue;
            }
            var inner = new StringBuilder();
            if (part is Price whole)
            {
                PriceWriter.Long(inner, whole, plan.Currency, indent + 4);
            }
            else
            {
                Part(inner, part, info, indent + 4, plan);
            }
            text.Append(inner.Length == 0 ? " {}" : "").Append('\n').Append(inner);
        }
    }

    private static (string Name, object Part) Pair(object entry)
    {
        var type = entry.GetType();
        return ((string)type.GetProperty("Key")!.GetValue(entry)!, type.GetProperty("Value")!.GetValue(entry)!);
    }

    private static void Amounts(StringBuilder text, InputInfo input, IReadOnlyDictionary<string, Estimate> amounts, int indent)
    {
        if (amounts.Count == 0)
        {
            return;
        }
        Key(text, indent, input.Key).Append('\n');
        foreach (var (name, amount) in amounts)
        {
            Scalar(Key(text, indent + 2, name), ValueText.Write(amount));
        }
    }

    private static void List(StringBuilder text, InputInfo input, IEnumerable items, int indent, LoopPlan plan)
    {
        var begun = false;
        foreach (var item in items)
        {
            if (!begun)
            {
                Key(text, indent, input.Key).Append('\n');
                begun = true;
            }
            var inner = new StringBuilder();
            Part(inner, item, PartInfo.Of(input.Element), indent + 4, plan);
            if (inner.Length == 0)
            {
                text.Append(' ', indent + 2).Append("- {}\n");
                continue;
            }
            inner[indent + 2] = '-';
            text.Append(inner);
        }
    }

    private static void Flow(StringBuilder text, InputInfo input, IReadOnlyList<string> values, int indent)
    {
        if (values.Count == 1 && input.Kind != InputKind.Curve)
        {
            Scalar(Key(text, indent, input.Key), values[0]);
        }
        else if (values.Count > 0)
        {
            Key(text, indent, input.Key).Append(" [").AppendJoin(", ", values.Select(v => ScalarText.Write(v, inFlow: true))).Append("]\n");
        }
    }

    internal static StringBuilder Key(StringBuilder text, int indent, string key) => text.Append(' ', indent).Append(ScalarText.Write(key, inFlow: false)).Append(':');

    internal static void Scalar(StringBuilder text, string value) => text.Append(' ').Append(ScalarText.Write(value, inFlow: false)).Append('\n');

    private static bool IsDefault(InputInfo input, object value)
    {
        if (value is Estimate estimate)
        {
            return estimate.From.Kind == OriginKind.Default;
        }
        return input.Input.Default is { } text && !input.Optional && !input.Input.Required && input.IsScalar && ValueText.Of(value) == text;
    }
}
