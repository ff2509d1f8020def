using System.Globalization;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using YamlDotNet.RepresentationModel;

namespace Runnel.Catalogue;

/// <summary>One row of a data file. Every key must be asked for, and every key asked for must be there, or the row is refused.</summary>
internal sealed class Row
{
    private const string Low = "low", Likely = "likely", High = "high", Value = "value", SourceKey = "source", Months = "months";

    private readonly string _file;
    private readonly string _kind;
    private readonly YamlMappingNode _node;
    private readonly HashSet<string> _asked = new(StringComparer.Ordinal);

    public Row(string file, string kind, YamlNode node, int number, string nameKey = "name")
    {
        _file = file;
        _kind = kind;
        Name = $"row {number}";
        _node = node as YamlMappingNode ?? throw Wrong("is not a list of keys and values", node);
        Name = Text(nameKey);
    }

    /// <summary>The row's name, its key within its kind.</summary>
    public string Name { get; }

    /// <summary>A text that must be there.</summary>
    public string Text(string key) => TextOrNull(key) ?? throw Wrong($"has no {key}", _node);

    /// <summary>A text that may be left out.</summary>
    public string? TextOrNull(string key) => Find(key) is { } node ? Scalar(node, key) : null;

    /// <summary>A list of texts that may be left out.</summary>
    public IReadOnlyList<string> Texts(string key) => Find(key) switch
    {
        null => [],
        YamlSequenceNode list => [.. list.Children.Select(c => Scalar(c, key))],
        var other => throw Wrong($"{key} is not a list", other),
    };

    /// <summary>yes or no.</summary>
    public bool Flag(string key) => Text(key) switch
    {
        "yes" => true,
        "no" => false,
        var other => throw Wrong($"{key} is neither yes nor no but \"{other}\"", _node),
    };

    /// <summary>A plain number within limits.</summary>
    public double Number(string key, double min, double max)
    {
        var node = Find(key) ?? throw Wrong($"has no {key}", _node);
        return Within(Number(node, key), min, max, key, node);
    }

    /// <summary>A value or range with its source, in a unit, within limits of that unit.</summary>
    public Estimate Estimate(string key, string label, Unit unit, double min, double max) =>
        EstimateOrNull(key, label, unit, min, max) ?? throw Wrong($"has no {key}", _node);

    /// <summary>A value or range with its source that may be left out.</summary>
    public Estimate? EstimateOrNull(string key, string label, Unit unit, double min, double max)
    {
        if (Find(key) is not { } node)
        {
            return null;
        }
        var keys = Keys(node, key, [Value, Low, Likely, High, SourceKey]);
        var source = keys.TryGetValue(SourceKey, out var s) ? Scalar(s, key) : throw Wrong($"{key} has no source", node);
        double? Get(string part) =>
            keys.TryGetValue(part, out var n) ? Within(Number(n, key), min, max, key, n) : null;
        var from = From(key, label, source);
        return (Get(Value), Get(Low), Get(Likely), Get(High)) switch
        {
            ({ } value, null, null, null) => Engine.Quantities.Estimate.Of(value, unit, from),
            (null, { } low, null, { } high) when low < high => Engine.Quantities.Estimate.Of(low, high, unit, from),
            (null, { } low, { } likely, { } high) when low < high && low <= likely && likely <= high =>
                Engine.Quantities.Estimate.Of(low, high, unit, from, likely),
            _ => throw Wrong($"{key} needs either one value, or a low under its high with any likely between them", node),
        };
    }

    /// <summary>
    /// Twelve values from January, with <c>unit</c> and, where they differ from the row's, <c>source</c> and how far a value may be off,
    /// <c>within percent</c>.
    /// </summary>
    public IReadOnlyList<Estimate> Year(
        string key, string label, Unit unit, IReadOnlyDictionary<string, double> units, string rowSource, double min, double max)
    {
        var node = Find(key) ?? throw Wrong($"has no {key}", _node);
        var keys = Keys(node, key, ["unit", Months, SourceKey, "within percent"]);
        if (!keys.TryGetValue("unit", out var u) || !units.TryGetValue(Scalar(u, key), out var factor))
        {
            throw Wrong($"{key} needs one of the units {string.Join(", ", units.Keys)}", node);
        }
        if (!keys.TryGetValue(Months, out var m) || m is not YamlSequenceNode { Children.Count: 12 } months)
        {
            throw Wrong($"{key} needs twelve months", node);
        }
        var source = keys.TryGetValue(SourceKey, out var s) ? Scalar(s, key) : rowSource;
        var off = keys.TryGetValue("within percent", out var w) ? Within(Number(w, key), 0, 50, key, w) / 100 : 0;
        return
        [
            .. months.Children.Select((child, i) =>
            {
                var value = Within(Number(child, key) * factor, min, max, key, child);
                var month = CalendarDay.MonthNames[i];
                var from = From($"{key}/{month}", $"{label} in {month}", source);
                return Engine.Quantities.Estimate.Of(value * (1 - off), value * (1 + off), unit, from, value);
            }),
        ];
    }

    /// <summary>Refuses the row if its best range leaves the range it survives.</summary>
    public void Inside(Estimate thrives, Estimate survives)
    {
        if (thrives.Low < survives.Low || thrives.High > survives.High)
        {
            throw Wrong($"thrives at {thrives.Low} to {thrives.High} °C but survives only {survives.Low} to {survives.High} °C", _node);
        }
    }

    /// <summary>Refuses the row if a key is left that nothing asked for.</summary>
    public void Done()
    {
        foreach (var key in _node.Children.Keys)
        {
            if (!_asked.Contains(Scalar(key, "key")))
            {
                throw Wrong($"has a key that nothing reads, \"{key}\"", key);
            }
        }
    }

    /// <summary>What is wrong, with its file, row and line.</summary>
    public CatalogueException Wrong(string what) => Wrong(what, _node);

    private CatalogueException Wrong(string what, YamlNode node) => new($"{_file}, {Name} (line {node.Start.Line}): {what}");

    private Origin From(string key, string label, string source) =>
        new($"catalogue:{_kind}/{Name}/{key}", label, OriginKind.Catalogue, source);

    private YamlNode? Find(string key)
    {
        _asked.Add(key);
        return _node.Children.TryGetValue(new YamlScalarNode(key), out var node) ? node : null;
    }

    private Dictionary<string, YamlNode> Keys(YamlNode node, string key, IReadOnlyList<string> allowed)
    {
        if (node is not YamlMappingNode mapping)
        {
            throw Wrong($"{key} is not a value with its source", node);
        }
        var keys = new Dictionary<string, YamlNode>(StringComparer.Ordinal);
        foreach (var (k, v) in mapping.Children)
        {
            var name = Scalar(k, key);
            if (!allowed.Contains(name, StringComparer.Ordinal))
            {
                throw Wrong($"{key} has a key that nothing reads, \"{name}\"", k);
            }
            keys.Add(name, v);
        }
        return keys;
    }

    private string Scalar(YamlNode node, string key) =>
        node is YamlScalarNode { Value: { } text } && !string.IsNullOrWhiteSpace(text)
            ? text.Trim()
            : throw Wrong($"{key} is empty or not a text", node);

    private double Number(YamlNode node, string key)
    {
        var text = Scalar(node, key);
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)
            ? number
            : throw Wrong($"{key} is \"{text}\", not a number", node);
    }

    private double Within(double number, double min, double max, string key, YamlNode node) =>
        number >= min && number <= max ? number : throw Wrong($"{key} is {number}, outside {min} to {max}", node);
}
