namespace Runnel.Host.Commands.Print;

/// <summary>How a piece of text is shown. Meaning never rests on it alone: words and signs carry it too.</summary>
internal enum Ink
{
    Plain,
    Strong,
    Quiet,
    Grave,
    Warning,
    Good,
}
