using Runnel.Engine.Quantities;
using Runnel.Files.Errors;
using Runnel.Files.Values;
using Runnel.Files.Yaml;

namespace Runnel.Files.Binding;

/// <summary>Binds nodes to the plan's records by their attributes and collects every error on the way.</summary>
internal sealed partial class Binder(string fileName, ValueContext context, List<PlanError> errors)
{
    private readonly Dictionary<MapNode, PartInfo> parts = new(ReferenceEqualityComparer.Instance);
    private readonly List<Reference> references = [];

    /// <summary>Which part each mapping of the text describes.</summary>
    public IReadOnlyDictionary<MapNode, PartInfo> Parts => parts;

    /// <summary>Names that must exist elsewhere in the plan.</summary>
    public IReadOnlyList<Reference> References => references;

    public ValueContext Context { get; } = context;

    /// <summary>Binds one part; a null map stands for a part that is left out and has only defaults.</summary>
    /// <param name="info">Which part.</param>
    /// <param name="map">What is written, or null.</param>
    /// <param name="site">Where.</param>
    /// <param name="name">Name given to it, for parts that have one.</param>
    /// <param name="like">A part of the same kind whose values fill what is not written.</param>
    /// <param name="incomplete">True if required keys shall not be asked for.</param>
    public object Part(PartInfo info, MapNode? map, Site site, string? name = null, object? like = null, bool incomplete = false)
    {
        var part = Activator.CreateInstance(info.Type)!;
        if (name is not null)
        {
            info.Name?.SetValue(part, name);
        }
        if (map is not null)
        {
            parts[map] = info;
            Keys(info, map, site);
        }
        foreach (var input in info.Inputs)
        {
            var entry = map?.Find(input.Key);
            if (entry is not null && !IsLeftOut(entry))
            {
                var value = Value(input, entry.Value, site.Below(input.Key, entry.Value.Start, About(input, site)), site);
                if (value is not null)
                {
                    input.Property.SetValue(part, value);
                }
            }
            else if (entry is { Value: ScalarNode { IsEmpty: true } } && (input.IsScalar || input.Input.Required))
            {
                Error(entry.Key.Start, site.Below(input.Key, entry.Key.Start, ""), "", new("nothing is written after the colon",
                    input.Input.Required ? Example(input) : $"{Example(input)}, or delete the line"));
            }
            else if (like is not null && input.Key != "like")
            {
                input.Property.SetValue(part, input.Property.GetValue(like));
            }
            else if (input.Input.Required && !incomplete)
            {
                Error(site.At, site, "", new($"{input.Key} is missing", Example(input)));
            }
            else
            {
                Default(input, part, site);
            }
        }
        return part;
    }

    public void Error(Spot at, Site site, string read, Trouble trouble) =>
        errors.Add(new(fileName, at.Line, at.Column, site.Where, read, trouble.Problem, trouble.Mend));

    private void Keys(PartInfo info, MapNode map, Site site)
    {
        Duplicates(map, site);
        foreach (var entry in map.Entries)
        {
            var key = entry.Key.Value;
            if (info.Find(key) is not null)
            {
                continue;
            }
            var mend = map.Flow && entry.Value is ScalarNode { IsEmpty: true }
                ? "a comma inside { } parts entries: put a value that holds commas in quotes"
                : Nearest.Mend(key, info.Keys, "known here are");
            Error(entry.Key.Start, site, key, new($"\"{key}\" is no key of {(site.Where.Length == 0 ? "a plan" : info.Title.ToLowerInvariant())}", mend));
        }
    }

    /// <summary>Names each key that is written twice in one mapping.</summary>
    public void Duplicates(MapNode map, Site site)
    {
        var met = new Dictionary<string, Spot>(StringComparer.Ordinal);
        foreach (var entry in map.Entries)
        {
            if (!met.TryAdd(entry.Key.Value, entry.Key.Start))
            {
                Error(entry.Key.Start, site, entry.Key.Value, new($"\"{entry.Key.Value}\" is written twice, first in line {met[entry.Key.Value].Line}",
                    "keep one, or give the other another name"));
            }
        }
    }

    private void Default(InputInfo input, object part, Site site)
    {
        if (input.Kind == InputKind.Part && !input.Optional)
        {
            var inner = site.Below(input.Key, site.At, About(input, site));
            input.Property.SetValue(part, Part(PartInfo.Of(input.Element), null, inner, incomplete: input.Input.Required));
            return;
        }
        if (input.Input.Default is not { } text || input.Optional && input.Kind != InputKind.Quantity)
        {
            return;
        }
        var at = site.Below(input.Key, site.At, About(input, site));
        if (input.Kind == InputKind.Quantity)
        {
            var quantity = DefaultQuantity(input, text);
            var origin = new Origin(at.Path, site.Label(input.Input.Label), OriginKind.Default, input.Input.DefaultSource);
            input.Property.SetValue(part, quantity.From(origin));
        }
        else if (Scalar(input, text, at, site, out var value, out var trouble))
        {
            input.Property.SetValue(part, value);
        }
        else
        {
            throw new InvalidOperationException($"the default of {at.Path} cannot be read: {trouble!.Problem}");
        }
    }

    private Quantity DefaultQuantity(InputInfo input, string text)
    {
        var found = input.Input.Unit is null && input.Key == "per"
            ? PriceText.TryPer(text, Context, out var quantity, out var trouble)
            : QuantityText.TryRead(text, Wanted(input), Context with { BareTemperatures = true }, out quantity, out trouble);
        return found ? quantity : throw new InvalidOperationException($"the default of {input.Key} cannot be read: {trouble!.Problem}");
    }

    private object? Value(InputInfo input, Node node, Site at, Site owner)
    {
        switch (input.Kind)
        {
            case InputKind.Part:
                return node is MapNode map ? Part(PartInfo.Of(input.Element), map, at) : Unexpected(node, at, "keys and values, indented below this key", input);
            case InputKind.PartMap:
                return node is MapNode named ? PartMap(input, named, at) : Unexpected(node, at, "entries by name, indented below this key", input);
            case InputKind.PartList:
                return PartList(input, node, at);
            case InputKind.QuantityMap:
                return node is MapNode amounts ? QuantityMap(input, amounts, at) : Unexpected(node, at, "entries by name, indented below this key", input);
            case InputKind.Quantities:
                return Quantities(input, node, at, owner);
            case InputKind.Curve:
                return Curve(input, node, at, owner);
            case InputKind.Texts:
                return Texts(input, node, at);
        }
        if (node is not ScalarNode scalar)
        {
            return Unexpected(node, at, "one value", input);
        }
        if (!Scalar(input, scalar.Value, at, owner, out var value, out var trouble))
        {
            Error(scalar.Start, at, scalar.Value, trouble!);
            return null;
        }
        if (input.Kind == InputKind.Text && Refers(input) is { } target)
        {
            references.Add(new(target, (string)value!, scalar.Start, at));
        }
        return value;
    }

    private object? Unexpected(Node node, Site at, string expected, InputInfo input)
    {
        var (what, read) = node switch
        {
            ScalarNode scalar => ("one value", scalar.Value),
            ListNode => ("a list", ""),
            _ => ("keys and values", ""),
        };
        Error(node.Start, at, read, new($"{what} stands here, {expected} was expected", input.Input.Example is null ? input.Input.Help : Example(input)));
        return null;
    }

    // An empty value under a key of many is a part whose entries are commented out: as if left out.
    private static bool IsLeftOut(MapEntry entry) =>
        entry.Value is ScalarNode { IsEmpty: true };

    private static string About(InputInfo input, Site site) => input.Kind == InputKind.Part
        ? input.Key == "place" ? "" : input.Input.Label.ToLowerInvariant()
        : site.About;

    internal static Wanted Wanted(InputInfo input) =>
        new(input.Input.Unit, $"{input.Key} {input.Input.Label}") { Min = input.Input.Min, Max = input.Input.Max };

    private static string Example(InputInfo input)
    {
        if (input.Input.Example is { } example)
        {
            return $"write {input.Key}: {example}";
        }
        if (input.Kind == InputKind.Quantity)
        {
            return Hints.Example(input.Input.Unit is { } u ? UnitText.OfSymbol(u, "EUR") : null, Wanted(input)).Replace("write it like ", $"write {input.Key}: ", StringComparison.Ordinal);
        }
        return input.Input.Help.Length > 0 ? $"write {input.Key}: {char.ToLowerInvariant(input.Input.Help[0])}{input.Input.Help[1..]}" : $"write {input.Key}: and its value";
    }
}
