namespace Runnel.Files.Weather;

/// <summary>Errors of one file up to a bound, a few of each kind, so that one bad column does not hide another.</summary>
internal sealed class EpwErrors(string file)
{
    private const int Most = 25;
    private const int MostOfAKind = 4;

    private readonly List<PlanError> _errors = [];
    private readonly Dictionary<string, int> _kinds = new(StringComparer.Ordinal);
    private int _more;

    public bool Any => _errors.Count > 0;

    /// <summary>The errors, in the order of the file; the last says how many more there are.</summary>
    public IReadOnlyList<PlanError> All
    {
        get
        {
            List<PlanError> all = [.. _errors.OrderBy(e => e.Line)];
            if (_more > 0)
            {
                all.Add(new(file, all[^1].Line, 1, "", "", $"{_more:N0} more errors are not shown", ""));
            }
            return all;
        }
    }

    public void Add(string kind, int line, int column, string where, ReadOnlySpan<char> read, string problem, string mend)
    {
        var seen = _kinds.GetValueOrDefault(kind);
        _kinds[kind] = seen + 1;
        if (seen >= MostOfAKind || _errors.Count >= Most)
        {
            _more++;
            return;
        }
        _errors.Add(new(file, line, column, where, read.Length > 200 ? read[..200].ToString() : read.ToString(), problem, mend));
    }
}
