using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Runnel.Files.Yaml;

/// <summary>Reads YAML into nodes with their places. Anchors, aliases, tags and further documents are refused; depth and size are bounded.</summary>
internal static class YamlTree
{
    /// <summary>Longest text that is read, characters.</summary>
    public const int LongestText = 1_000_000;

    /// <summary>Deepest nesting that is read.</summary>
    public const int Deepest = 16;

    /// <summary>The root of the text, or null with the one error that stopped the reading.</summary>
    public static Node? Read(string text, string fileName, out PlanError? error)
    {
        error = Refuse(text, fileName);
        if (error is not null)
        {
            return null;
        }
        var skip = text.StartsWith('\uFEFF') ? 1 : 0;
        try
        {
            var reader = new Reader(new Parser(new StringReader(text[skip..])), skip);
            return reader.Document();
        }
        catch (RefusedException refused)
        {
            var at = refused.At;
            error = new(fileName, at.Line, at.Column, "", refused.Read, refused.Message, refused.Mend);
        }
        catch (YamlException broken)
        {
            error = Syntax(text, fileName, broken);
        }
        return null;
    }

    private static PlanError? Refuse(string text, string fileName)
    {
        if (text.Length > LongestText)
        {
            return new(fileName, 1, 1, "", "", $"the file has {text.Length:N0} characters, more than the {LongestText:N0} a plan may have",
                "a plan is a few pages; check that this is the right file");
        }
        var line = 1;
        var start = 0;
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (c == '\n')
            {
                line++;
                start = i + 1;
            }
            else if (c < ' ' && c is not ('\t' or '\r') || c is '\u007F' or '\uFFFE' or '\uFFFF' || char.IsSurrogate(c) && !IsPaired(text, i))
            {
                return new(fileName, line, i - start + 1, "", "", $"a character that is no text stands here (U+{(int)c:X4})",
                    "delete it, or restore the file from a copy");
            }
        }
        return null;
    }

    private static bool IsPaired(string text, int i) =>
        char.IsHighSurrogate(text[i]) ? i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]) : i > 0 && char.IsHighSurrogate(text[i - 1]);

    private static PlanError Syntax(string text, string fileName, YamlException broken)
    {
        var line = Math.Max(1, (int)broken.Start.Line);
        var column = Math.Max(1, (int)broken.Start.Column);
        var lines = text.Split('\n');
        var tab = Array.FindIndex(lines, l => l.TrimStart(' ').StartsWith('\t'));
        if (tab >= 0 && (tab < line || broken.Message.Contains("tab", StringComparison.Ordinal)))
        {
            return new(fileName, tab + 1, lines[tab].IndexOf('\t', StringComparison.Ordinal) + 1, "", lines[tab].Trim(), "a line is indented with a tab", "indent with spaces");
        }
        var read = line <= lines.Length ? lines[line - 1].Trim() : "";
        var message = broken.Message;
        bool Says(string words) => message.Contains(words, StringComparison.OrdinalIgnoreCase);
        var (problem, mend) = message switch
        {
            _ when Says("tab") => ("a line is indented with a tab", "indent with spaces"),
            _ when Says("invalid mapping") => ("a second colon in one line", "put the value in quotes when it holds a colon and a space"),
            _ when Says("escape") => ("a backslash in double quotation marks begins a code that is not known", "use single quotation marks, or write \\ for a backslash"),
            _ when Says("quoted scalar") => ("a quotation mark is not closed", "close it, or leave both out"),
            _ when Says("flow") => ("a bracket [ or { is not closed, or a comma is missing", "close the bracket"),
            _ when Says("cannot start any token") => ("a value cannot begin with this character", "put the value in quotes"),
            _ when Says("node content") => ("a bracket or comma stands here without what belongs to it", "delete it, or put the value in quotes"),
            _ when Says("expected key") => ("a key without a colon, or indentation that does not fit the lines above", "write key: value, and indent entries of one part alike"),
            _ when Says("block scalar") => ("text after | or > must begin on the next line", "put the value in quotes"),
            _ => ("the text cannot be read as YAML here", "check colons, indentation and quotation marks around this line"),
        };
        return new(fileName, Math.Min(line, lines.Length), column, "", read, problem, mend);
    }

    private sealed class RefusedException(Spot at, string read, string problem, string mend) : Exception(problem)
    {
        public Spot At { get; } = at;

        public string Read { get; } = read;

        public string Mend { get; } = mend;
    }

    private sealed class Reader(Parser parser, int skip)
    {
        public Node? Document()
        {
            Node? root = null;
            while (Move())
            {
                switch (parser.Current)
                {
                    case StreamStart or StreamEnd or DocumentEnd:
                        break;
                    case DocumentStart start when root is not null:
                        throw new RefusedException(At(start.Start), "---", "a second document begins here", "keep one plan in one file");
                    case DocumentStart:
                        break;
                    case ParsingEvent node:
                        root = Read(node, 0);
                        break;
                }
            }
            return root;
        }

        private Node Read(ParsingEvent node, int depth)
        {
            if (depth > Deepest)
            {
                throw new RefusedException(At(node.Start), "", $"brackets or indentation are nested more than {Deepest} deep", "a plan needs five levels at most");
            }
            if (node is AnchorAlias alias)
            {
                throw new RefusedException(At(alias.Start), $"*{alias.Value}", "aliases are not used in plans",
                    "write the value out, put it in quotes if it begins with *, or write like: for a vessel like another");
            }
            if (node is NodeEvent { Anchor.IsEmpty: false } anchored)
            {
                throw new RefusedException(At(anchored.Start), $"&{anchored.Anchor.Value}", "anchors are not used in plans",
                    "leave it out, or put the value in quotes if it begins with &");
            }
            if (node is NodeEvent { Tag.IsEmpty: false } tagged && !tagged.Tag.IsNonSpecific)
            {
                throw new RefusedException(At(tagged.Start), "!", "tags are not used in plans", "leave it out, or put the value in quotes if it begins with !");
            }
            return node switch
            {
                Scalar scalar => ReadScalar(scalar),
                MappingStart map => ReadMap(map, depth),
                SequenceStart list => ReadList(list, depth),
                _ => throw new RefusedException(At(node.Start), "", "something unexpected stands here", "write key: value"),
            };
        }

        private ScalarNode ReadScalar(Scalar scalar)
        {
            var look = scalar.Style switch
            {
                ScalarStyle.SingleQuoted => ScalarLook.SingleQuoted,
                ScalarStyle.DoubleQuoted => ScalarLook.DoubleQuoted,
                ScalarStyle.Literal or ScalarStyle.Folded => ScalarLook.Block,
                _ => ScalarLook.Plain,
            };
            return new(At(scalar.Start), (int)scalar.End.Index + skip, scalar.Value, look);
        }

        private MapNode ReadMap(MappingStart start, int depth)
        {
            var entries = new List<MapEntry>();
            while (Next() is not MappingEnd)
            {
                var at = parser.Current!.Start;
                if (Read(parser.Current, depth + 1) is not ScalarNode key)
                {
                    throw new RefusedException(At(at), "", "a list or a mapping stands where a key was expected", "write key: value");
                }
                entries.Add(new(key, Read(Next(), depth + 1)));
            }
            return new(At(start.Start), EndOfCollection(start.Style == MappingStyle.Flow), start.Style == MappingStyle.Flow, entries);
        }

        private ListNode ReadList(SequenceStart start, int depth)
        {
            var items = new List<Node>();
            while (Next() is not SequenceEnd)
            {
                items.Add(Read(parser.Current!, depth + 1));
            }
            return new(At(start.Start), EndOfCollection(start.Style == SequenceStyle.Flow), start.Style == SequenceStyle.Flow, items);
        }

        // The parser marks the closing bracket of a flow collection by where it stands, not by where it ends.
        private int EndOfCollection(bool flow) => (int)parser.Current!.End.Index + skip + (flow ? 1 : 0);

        private ParsingEvent Next() => Move() && parser.Current is { } next
            ? next
            : throw new RefusedException(new(0, 1, 1), "", "the file ends in the middle", "restore its end from a copy");

        // The parser meets some unclosed brackets with this exception instead of its own.
        private bool Move()
        {
            try
            {
                return parser.MoveNext();
            }
            catch (InvalidOperationException)
            {
                throw new RefusedException(parser.Current is { } last ? At(last.Start) : new(0, 1, 1), "", "a bracket [ or { is not closed, or a comma is missing, after this place", "close the bracket");
            }
        }

        private Spot At(Mark mark) => new((int)mark.Index + skip, Math.Max(1, (int)mark.Line), Math.Max(1, (int)mark.Column));
    }
}
