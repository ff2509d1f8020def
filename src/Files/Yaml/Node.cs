namespace Runnel.Files.Yaml;

/// <summary>Where something stands in a text: offset from its start, and line and column from 1.</summary>
internal readonly record struct Spot(int Index, int Line, int Column);

/// <summary>A piece of a YAML text with its place.</summary>
internal abstract record Node(Spot Start, int End);

/// <summary>A single value.</summary>
/// <param name="Start">Where it begins, quotes included.</param>
/// <param name="End">Offset after its last character, quotes included.</param>
/// <param name="Value">Its text without quotes and escapes.</param>
/// <param name="Style">How it is quoted.</param>
internal sealed record ScalarNode(Spot Start, int End, string Value, ScalarLook Style) : Node(Start, End)
{
    /// <summary>True if nothing is written.</summary>
    public bool IsEmpty => Style == ScalarLook.Plain && Value.Length == 0;
}

internal enum ScalarLook
{
    Plain,
    SingleQuoted,
    DoubleQuoted,
    Block,
}

/// <summary>Keys with their values.</summary>
internal sealed record MapNode(Spot Start, int End, bool Flow, IReadOnlyList<MapEntry> Entries) : Node(Start, End)
{
    public Node? this[string key] => Find(key)?.Value;

    public MapEntry? Find(string key)
    {
        foreach (var entry in Entries)
        {
            if (entry.Key.Value == key)
            {
                return entry;
            }
        }
        return null;
    }
}

internal sealed record MapEntry(ScalarNode Key, Node Value);

/// <summary>Values in order.</summary>
internal sealed record ListNode(Spot Start, int End, bool Flow, IReadOnlyList<Node> Items) : Node(Start, End);
