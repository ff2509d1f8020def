using System.Collections;
using System.Reflection;
using Runnel.Engine.Quantities;

namespace Runnel.Files.Tests;

/// <summary>Walks records of the plan.</summary>
internal static class Estimates
{
    /// <summary>Every estimate in a plan.</summary>
    public static IEnumerable<Estimate> Of(object? value)
    {
        switch (value)
        {
            case null or string or ValueType:
                return [];
            case Estimate estimate:
                return [estimate];
            case IEnumerable many:
                return many.Cast<object>().SelectMany(o => o.GetType().IsGenericType && o.GetType().GetGenericTypeDefinition() == typeof(KeyValuePair<,>)
                    ? Of(o.GetType().GetProperty("Value")!.GetValue(o)) : Of(o));
            default:
                return Properties(value).SelectMany(p => Of(p.GetValue(value)));
        }
    }

    /// <summary>Inputs with a default that hold nothing.</summary>
    public static IEnumerable<string> Missing(object? value) => value switch
    {
        null or string or ValueType or Estimate => [],
        IEnumerable many => many.Cast<object>().SelectMany(o => Missing(o.GetType().GetProperty("Value")?.GetValue(o) ?? o)),
        _ => Properties(value).SelectMany(p => p.GetCustomAttribute<Engine.Plan.InputAttribute>() is { Default: not null } input && p.GetValue(value) is null
            ? [$"{value.GetType().Name}: {input.Key}"] : Missing(p.GetValue(value))),
    };

    /// <summary>The first difference between two plans, or null. Numbers may differ by their last digits.</summary>
    public static string? Difference(object? a, object? b, string at = "plan")
    {
        switch (a, b)
        {
            case (null, null):
                return null;
            case (null, _) or (_, null):
                return $"{at}: {a ?? "nothing"} and {b ?? "nothing"}";
            case (Estimate x, Estimate y):
                return Near(x.Low, y.Low) && Near(x.Likely, y.Likely) && Near(x.High, y.High) && x.Unit.Dimension == y.Unit.Dimension && x.Unit.Symbol == y.Unit.Symbol &&
                    x.From.Kind == y.From.Kind && x.From.Label == y.From.Label ? null : $"{at}: {x} and {y}";
            case (string x, string y):
                return x == y ? null : $"{at}: \"{x}\" and \"{y}\"";
            case (IDictionary x, IDictionary y):
                var keys = x.Keys.Cast<string>().ToList();
                return keys.SequenceEqual(y.Keys.Cast<string>(), StringComparer.Ordinal)
                    ? keys.Select(k => Difference(x[k], y[k], $"{at}/{k}")).FirstOrDefault(d => d is not null)
                    : $"{at}: names differ";
            case (IEnumerable x, IEnumerable y):
                var (first, second) = (x.Cast<object>().ToList(), y.Cast<object>().ToList());
                return first.Count == second.Count
                    ? first.Select((o, i) => Difference(o, second[i], $"{at}/{i}")).FirstOrDefault(d => d is not null)
                    : $"{at}: {first.Count} and {second.Count} entries";
        }
        var type = a.GetType();
        if (type != b.GetType())
        {
            return $"{at}: {type.Name} and {b.GetType().Name}";
        }
        if (type.IsPrimitive || type.IsEnum || type.Namespace == "System")
        {
            return a.Equals(b) || a is double x1 && b is double y1 && Near(x1, y1) ? null : $"{at}: {a} and {b}";
        }
        return Properties(a).Select(p => Difference(p.GetValue(a), p.GetValue(b), $"{at}/{p.Name}")).FirstOrDefault(d => d is not null);
    }

    private static IEnumerable<PropertyInfo> Properties(object value) =>
        value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0 && p.Name != "EqualityContract");

    private static bool Near(double a, double b) => Math.Abs(a - b) <= 1e-10 * Math.Max(Math.Abs(a), Math.Abs(b)) + 1e-15;
}
