namespace Runnel.Engine.Figures;

/// <summary>Where a rule or a value comes from.</summary>
/// <param name="Text">Author, year, title, table or equation; or what practice it is.</param>
/// <param name="Kind">How well it is known.</param>
public sealed record Source(string Text, SourceKind Kind = SourceKind.Published)
{
    /// <summary>A rule of the trade without a source.</summary>
    public static Source Practice(string what) => new($"common practice, no source: {what}", SourceKind.CommonPractice);

    /// <summary>A value recalled from a handbook and not re-read.</summary>
    public static Source FromMemory(string where) => new($"from memory: {where}", SourceKind.FromMemory);

    /// <summary>A definition, a conversion or plain arithmetic.</summary>
    public static Source Definition(string what) => new(what, SourceKind.Definition);

    /// <inheritdoc />
    public override string ToString() => Text;
}

/// <summary>How well a source is known.</summary>
public enum SourceKind
{
    /// <summary>Read in a published work.</summary>
    Published,

    /// <summary>Recalled from a published work, not re-read.</summary>
    FromMemory,

    /// <summary>A rule of the trade, no source.</summary>
    CommonPractice,

    /// <summary>True by definition.</summary>
    Definition,
}
