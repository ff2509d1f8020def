namespace Runnel.Engine.Assess;

/// <summary>Finds rows by the names that growers write, and proposes names for one that is not there.</summary>
public static class Names
{
    /// <summary>The row of that name or other name, whatever its capitals and spaces; null when there is none.</summary>
    public static T? Find<T>(IEnumerable<T> rows, Func<T, string> name, Func<T, IReadOnlyList<string>> also, string wanted)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(also);
        ArgumentNullException.ThrowIfNull(wanted);
        var key = Plain(wanted);
        T? byOther = null;
        foreach (var row in rows)
        {
            if (Plain(name(row)) == key)
            {
                return row;
            }
            byOther ??= also(row).Any(other => Plain(other) == key) ? row : null;
        }
        return byOther;
    }

    /// <summary>
    /// The known names that the writer may have meant, the nearest first: those that hold the wanted words ("lettuce" in "leaf
    /// lettuce"), then those that few changed, missing, extra or swapped letters would make of it. Empty when nothing is near.
    /// </summary>
    public static IReadOnlyList<string> Nearest(string wanted, IEnumerable<string> known, int most = 3)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        ArgumentNullException.ThrowIfNull(known);
        ArgumentOutOfRangeException.ThrowIfNegative(most);
        var key = Plain(wanted);
        return
        [
            .. known.Distinct(StringComparer.OrdinalIgnoreCase)
                .Select(name => (Name: name, Away: Away(key, Plain(name))))
                .Where(n => n.Away is not null)
                .OrderBy(n => n.Away)
                .ThenBy(n => n.Name, StringComparer.OrdinalIgnoreCase)
                .Take(most)
                .Select(n => n.Name),
        ];
    }

    /// <summary>Letters to change, insert, leave out or swap with their neighbour to turn one word into the other.</summary>
    /// <remarks>Optimal string alignment, Levenshtein 1966 with the swaps of Damerau 1964; no stretch is edited twice.</remarks>
    public static int Distance(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            d[i, 0] = i;
        }
        for (var j = 0; j <= b.Length; j++)
        {
            d[0, j] = j;
        }
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var change = d[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                d[i, j] = Math.Min(change, Math.Min(d[i - 1, j], d[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
                }
            }
        }
        return d[a.Length, b.Length];
    }

    private static int? Away(string wanted, string name)
    {
        if (wanted.Length == 0)
        {
            return null;
        }
        var distance = Distance(wanted, name);
        if (distance <= 1)
        {
            return distance;
        }
        // A word of the name counts before a misspelling: "lettuce" means some lettuce.
        if ((wanted.Length >= 3 && name.Contains(wanted)) || (name.Length >= 3 && wanted.Contains(name)))
        {
            return 1;
        }
        return distance <= Math.Max(2, wanted.Length / 3) && distance < Math.Max(wanted.Length, name.Length) ? distance : null;
    }

    private static string Plain(string name) =>
        string.Join(' ', name.Split([' ', '\t', '-', '_', ','], StringSplitOptions.RemoveEmptyEntries)).ToLowerInvariant();
}
