using System.Text;
using Runnel.Files.Binding;
using Runnel.Files.Yaml;

namespace Runnel.Files.Edit;

/// <summary>Where and how one value of a text is replaced or added.</summary>
internal abstract record Spotted
{
    /// <summary>A value that is written.</summary>
    internal sealed record Written(ScalarNode Node, bool InFlow) : Spotted;

    /// <summary>A key that is not written, in a mapping that is.</summary>
    internal sealed record Absent(MapNode Parent, string Key) : Spotted;

    /// <summary>A key of a part that is not written either.</summary>
    internal sealed record Orphan(MapNode Grandparent, string Parent, string Key) : Spotted;
}

/// <summary>Replaces single values in a plan's text; every other character stays.</summary>
internal static class PlanEdit
{
    public static string? TextAt(ReadPlan read, string path) => Find(read, path) is Spotted.Written written ? written.Node.Value : null;

    public static Spotted? Find(ReadPlan read, string path)
    {
        if (read.Root is not MapNode root || path.Length == 0)
        {
            return null;
        }
        if (Walk(read, root, PartInfo.Of<Engine.Plan.LoopPlan>(), path, inFlow: false) is { } found)
        {
            return found;
        }
        // Several numbers in one scalar carry their name behind #.
        var inside = path.LastIndexOf('#');
        if (inside > 0 && Walk(read, root, PartInfo.Of<Engine.Plan.LoopPlan>(), path[..inside], inFlow: false) is Spotted.Written whole)
        {
            return whole;
        }
        return MissingPrice(root, path);
    }

    // A part without a price may be given one, in its short form.
    private static Spotted? MissingPrice(MapNode root, string path)
    {
        const string prices = "prices";
        if (!path.StartsWith(prices + "/", StringComparison.Ordinal) || path.Contains('#', StringComparison.Ordinal) || path[(prices.Length + 1)..] is not { Length: > 0 } part)
        {
            return null;
        }
        return root.Find(prices) switch
        {
            null => new Spotted.Orphan(root, prices, part),
            { Value: MapNode map } when map.Find(part) is null => new Spotted.Absent(map, part),
            _ => null,
        };
    }

    public static string Change(string text, ReadPlan read, string path, string value)
    {
        var found = Find(read, path) ?? throw new ArgumentException($"there is no single value at {path}", nameof(path));
        var changed = found switch
        {
            Spotted.Written written => Replace(text, written, value),
            Spotted.Absent absent => Insert(text, absent.Parent, absent.Key, ScalarText.Write(value, absent.Parent.Flow)),
            Spotted.Orphan orphan => Insert(text, orphan.Grandparent, orphan.Parent, $"{{{ScalarText.Write(orphan.Key, inFlow: true)}: {ScalarText.Write(value, inFlow: true)}}}"),
            _ => text,
        };
        var again = YamlTree.Read(changed, "", out var broken);
        if (broken is not null || !EditCheck.OnlyDiffersAt(read.Root!, again, found))
        {
            throw new ArgumentException($"the value at {path} cannot be replaced without touching what stands around it; change it in the file", nameof(value));
        }
        return changed;
    }

    // Names may hold slashes, so each key is tried as a whole.
    private static Spotted? Walk(ReadPlan read, Node node, PartInfo? part, string path, bool inFlow)
    {
        switch (node)
        {
            case MapNode map:
                var flow = inFlow || map.Flow;
                foreach (var entry in map.Entries)
                {
                    var key = entry.Key.Value;
                    if (path == key && entry.Value is ScalarNode scalar)
                    {
                        return new Spotted.Written(scalar, flow);
                    }
                    if (path.Length > key.Length && path[key.Length] == '/' && path.StartsWith(key, StringComparison.Ordinal) &&
                        Walk(read, entry.Value, null, path[(key.Length + 1)..], flow) is { } found)
                    {
                        return found;
                    }
                }
                part = read.Parts.TryGetValue(map, out var known) ? known : part;
                return part is null ? null : Missing(map, part, path);
            case ListNode list:
                var slash = path.IndexOf('/', StringComparison.Ordinal);
                var number = slash < 0 ? path : path[..slash];
                if (!int.TryParse(number, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var index) || index >= list.Items.Count)
                {
                    return null;
                }
                if (slash < 0)
                {
                    return list.Items[index] is ScalarNode item ? new Spotted.Written(item, inFlow || list.Flow) : null;
                }
                return Walk(read, list.Items[index], null, path[(slash + 1)..], inFlow || list.Flow);
            default:
                return null;
        }
    }

    private static Spotted? Missing(MapNode map, PartInfo part, string path)
    {
        if (part.Find(path) is { IsScalar: true } or { Kind: InputKind.Quantities })
        {
            return map.Find(path) is null ? new Spotted.Absent(map, path) : null;
        }
        var slash = path.IndexOf('/', StringComparison.Ordinal);
        if (slash > 0 && part.Find(path[..slash]) is { Kind: InputKind.Part } inner && map.Find(inner.Key) is null &&
            PartInfo.Of(inner.Element).Find(path[(slash + 1)..]) is { IsScalar: true } key)
        {
            return new Spotted.Orphan(map, inner.Key, key.Key);
        }
        return null;
    }

    private static string Replace(string text, Spotted.Written written, string value)
    {
        var node = written.Node;
        var end = node.End;
        while (end > node.Start.Index && char.IsWhiteSpace(text[end - 1]))
        {
            end--;
        }
        var scalar = ScalarText.Write(value, written.InFlow, node.Style);
        if (node.IsEmpty && node.Start.Index > 0 && !char.IsWhiteSpace(text[node.Start.Index - 1]))
        {
            scalar = " " + scalar;
        }
        return string.Concat(text.AsSpan(0, node.Start.Index), scalar, text.AsSpan(Math.Max(end, node.Start.Index)));
    }

    private static string Insert(string text, MapNode map, string key, string scalar)
    {
        var entry = $"{ScalarText.Write(key, map.Flow)}: {scalar}";
        if (map.Flow)
        {
            return map.Entries.Count == 0
                ? text.Insert(map.Start.Index + 1, entry)
                : text.Insert(EndOf(map.Entries[^1], text), $", {entry}");
        }
        var newLine = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        // Behind the first key, so that the value need not be searched for at the end of a long part.
        var after = map.Entries.FirstOrDefault(e => e.Value is ScalarNode { IsEmpty: false, Style: not ScalarLook.Block }) ?? map.Entries[^1];
        var end = EndOf(after, text);
        var line = text.IndexOf('\n', Math.Max(0, end - 1));
        var indent = new string(' ', map.Entries[0].Key.Start.Column - 1);
        if (line < 0)
        {
            return $"{text}{newLine}{indent}{entry}{newLine}";
        }
        return new StringBuilder(text).Insert(line + 1, $"{indent}{entry}{newLine}").ToString();
    }

    private static int EndOf(MapEntry entry, string text)
    {
        var end = Math.Max(entry.Key.End, Last(entry.Value));
        while (end > 0 && char.IsWhiteSpace(text[end - 1]))
        {
            end--;
        }
        return end;
    }

    // The end of a block mapping is known only by its last value.
    private static int Last(Node node) => node switch
    {
        MapNode { Flow: false, Entries.Count: > 0 } map => Math.Max(map.Entries[^1].Key.End, Last(map.Entries[^1].Value)),
        ListNode { Flow: false, Items.Count: > 0 } list => Last(list.Items[^1]),
        _ => node.End,
    };
}
