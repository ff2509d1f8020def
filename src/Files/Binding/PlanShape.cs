using System.Collections.Concurrent;
using System.Reflection;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Files.Binding;

/// <summary>How an input is written.</summary>
internal enum InputKind
{
    Quantity,
    Quantities,
    QuantityMap,
    Word,
    Text,
    Texts,
    Whole,
    YesNo,
    Clock,
    Date,
    Day,
    Hours,
    Extent,
    Shape,
    Insulation,
    PipeSize,
    Drain,
    Curve,
    Part,
    PartMap,
    PartList,
}

/// <summary>One input of a part: its description and its property.</summary>
internal sealed record InputInfo(PropertyInfo Property, InputAttribute Input, InputKind Kind, Type Element, bool Optional)
{
    public string Key => Input.Key;

    public bool IsScalar => Kind is not (InputKind.Part or InputKind.PartMap or InputKind.PartList or InputKind.Quantities or InputKind.QuantityMap or InputKind.Curve);
}

/// <summary>The inputs of one record of the plan, from its attributes; read by reflection once.</summary>
internal sealed record PartInfo(Type Type, string Title, string Help, IReadOnlyList<InputInfo> Inputs, PropertyInfo? Name)
{
    private static readonly ConcurrentDictionary<Type, PartInfo> Known = new();

    private readonly Dictionary<string, InputInfo> byKey = Inputs.ToDictionary(i => i.Key, StringComparer.Ordinal);

    public IReadOnlyList<string> Keys { get; } = [.. Inputs.Select(i => i.Key)];

    public InputInfo? Find(string key) => byKey.GetValueOrDefault(key);

    public static PartInfo Of(Type type) => Known.GetOrAdd(type, Read);

    public static PartInfo Of<T>() => Of(typeof(T));

    /// <summary>Every part that a plan may hold, the plan first, in the order in which they are met.</summary>
    public static IReadOnlyList<PartInfo> All()
    {
        var met = new List<PartInfo>();
        void Visit(PartInfo part)
        {
            if (met.Contains(part))
            {
                return;
            }
            met.Add(part);
            foreach (var input in part.Inputs.Where(i => i.Kind is InputKind.Part or InputKind.PartMap or InputKind.PartList))
            {
                Visit(Of(input.Element));
            }
        }
        Visit(Of<LoopPlan>());
        return met;
    }

    public bool Equals(PartInfo? other) => other?.Type == Type;

    public override int GetHashCode() => Type.GetHashCode();

    private static PartInfo Read(Type type)
    {
        var part = type.GetCustomAttribute<PlanPartAttribute>() ?? throw new InvalidOperationException($"{type.Name} is no part of a plan");
        var nullability = new NullabilityInfoContext();
        var inputs = type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Select(p => (Property: p, Input: p.GetCustomAttribute<InputAttribute>()))
            .Where(p => p.Input is not null)
            .OrderBy(p => Depth(p.Property.DeclaringType!)).ThenBy(p => p.Property.MetadataToken)
            .Select(p => Describe(p.Property, p.Input!, nullability))
            .ToList();
        var name = type.GetProperty("Name");
        return new(type, part.Title, part.Help, inputs, name?.GetCustomAttribute<InputAttribute>() is null ? name : null);
    }

    private static int Depth(Type type)
    {
        var depth = 0;
        for (var t = type.BaseType; t is not null; t = t.BaseType)
        {
            depth++;
        }
        return depth;
    }

    private static InputInfo Describe(PropertyInfo property, InputAttribute input, NullabilityInfoContext nullability)
    {
        var type = property.PropertyType;
        var optional = Nullable.GetUnderlyingType(type) is not null || nullability.Create(property).WriteState == NullabilityState.Nullable;
        type = Nullable.GetUnderlyingType(type) ?? type;
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyDictionary<,>))
        {
            var value = type.GetGenericArguments()[1];
            return new(property, input, value == typeof(Estimate) ? InputKind.QuantityMap : InputKind.PartMap, value, optional);
        }
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>))
        {
            var item = type.GetGenericArguments()[0];
            var kind = item == typeof(Estimate) ? InputKind.Quantities
                : item == typeof(string) ? InputKind.Texts
                : item == typeof(CurvePoint) ? InputKind.Curve
                : InputKind.PartList;
            return new(property, input, kind, item, optional);
        }
        return new(property, input, Scalar(type, property), type, optional);
    }

    private static InputKind Scalar(Type type, PropertyInfo property) => type switch
    {
        _ when type == typeof(Estimate) => InputKind.Quantity,
        _ when type == typeof(string) => InputKind.Text,
        _ when type == typeof(int) => InputKind.Whole,
        _ when type == typeof(bool) => InputKind.YesNo,
        _ when type == typeof(TimeOnly) => InputKind.Clock,
        _ when type == typeof(DateOnly) => InputKind.Date,
        _ when type == typeof(CalendarDay) => InputKind.Day,
        _ when type == typeof(HourSpan) => InputKind.Hours,
        _ when type == typeof(Extent) => InputKind.Extent,
        _ when type == typeof(Shape) => InputKind.Shape,
        _ when type == typeof(Insulation) => InputKind.Insulation,
        _ when type == typeof(PipeSize) => InputKind.PipeSize,
        _ when type == typeof(DrainSpec) => InputKind.Drain,
        { IsEnum: true } => InputKind.Word,
        _ when type.GetCustomAttribute<PlanPartAttribute>() is not null => InputKind.Part,
        _ => throw new InvalidOperationException($"{property.DeclaringType!.Name}.{property.Name}: {type.Name} cannot be read from a plan"),
    };
}
