using Runnel.Files.Yaml;

namespace Runnel.Files.Binding;

/// <summary>A place in a plan while it is read.</summary>
/// <param name="Path">Address in the file: lamps/over the beds.</param>
/// <param name="Where">The same for people: lamps / over the beds.</param>
/// <param name="About">What follows an input's label so that it is useful alone: "lamps over the beds".</param>
/// <param name="At">Where it stands in the text.</param>
internal sealed record Site(string Path, string Where, string About, Spot At)
{
    public static readonly Site Root = new("", "", "", new(0, 1, 1));

    public Site Below(string key, Spot at, string about) =>
        new(Path.Length == 0 ? key : $"{Path}/{key}", Where.Length == 0 ? key : $"{Where} / {key}", about, at);

    public Site Item(int index, Spot at, string about) => new($"{Path}/{index}", $"{Where} / {Ordinal(index)}", about, at);

    public string Label(string label) => About.Length == 0 ? label : $"{label}, {About}";

    private static string Ordinal(int index) => $"entry {index + 1}";
}
