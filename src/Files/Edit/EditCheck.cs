using Runnel.Files.Yaml;

namespace Runnel.Files.Edit;

/// <summary>Makes sure that a change touched nothing but what it was meant to.</summary>
internal static class EditCheck
{
    public static bool OnlyDiffersAt(Node before, Node? after, Spotted spotted)
    {
        if (after is null)
        {
            return false;
        }
        return spotted switch
        {
            Spotted.Written written => Same(before, after, written.Node, null, null),
            Spotted.Absent absent => Same(before, after, null, absent.Parent, absent.Key),
            Spotted.Orphan orphan => Same(before, after, null, orphan.Grandparent, orphan.Parent),
            _ => false,
        };
    }

    private static bool Same(Node a, Node b, ScalarNode? except, MapNode? grown, string? key)
    {
        switch (a, b)
        {
            case (ScalarNode x, ScalarNode y):
                return ReferenceEquals(x, except) || x.Value == y.Value;
            case (ListNode x, ListNode y):
                return x.Items.Count == y.Items.Count && x.Items.Zip(y.Items).All(p => Same(p.First, p.Second, except, grown, key));
            case (MapNode x, MapNode y):
                var entries = ReferenceEquals(x, grown) ? y.Entries.Where(e => e.Key.Value != key).ToList() : y.Entries;
                return y.Entries.Count == x.Entries.Count + (ReferenceEquals(x, grown) ? 1 : 0) && entries.Count == x.Entries.Count &&
                    x.Entries.Zip(entries).All(p => p.First.Key.Value == p.Second.Key.Value && Same(p.First.Value, p.Second.Value, except, grown, key));
            default:
                return false;
        }
    }
}
