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
        var read = line <= lines.Length ? lines[line - 1].Trim() : "";
        var (problem, mend) = broken.Message switch
        {
            _ when lines.Take(line).Any(l => l.TrimStart(' ').StartsWith('\t')) =>
                ("a line is indented with a tab", "indent with spaces"),
            var m when m.Contains("simple key", StringComparison.Ordinal) || m.Contains("expected ':'", StringComparison.Ordinal) =>
                ("a key without a colon, or a value that runs on", "write key: value, with a space after the colon"),
            var m when m.Contains("quoted scalar", StringComparison.Ordinal) => ("a quotation mark is not closed", "close it, or leave both out"),
            var m when m.Contains("flow", StringComparison.Ordinal) => ("a bracket [ or { is not closed or a comma is missing", "close the bracket"),
            var m when m.Contains("mapping values are not allowed", StringComparison.OrdinalIgnoreCase) =>
                ("a second colon in one line", "put the value in quotes when it holds a colon and a space"),
            var m when m.Contains("block", StringComparison.Ordinal) => ("the indentation does not fit the lines above", "indent entries of one part alike"),
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
            while (parser.MoveNext())
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
            return new(At(start.Start), (int)parser.Current!.End.Index + skip, start.Style == MappingStyle.Flow, entries);
        }

        private ListNode ReadList(SequenceStart start, int depth)
        {
            var items = new List<Node>();
            while (Next() is not SequenceEnd)
            {
                items.Add(Read(parser.Current!, depth + 1));
            }
            return new(At(start.Start), (int)parser.Current!.End.Index + skip, start.Style == SequenceStyle.Flow, items);
        }

        private ParsingEvent Next() => parser.MoveNext() && parser.Current is { } next
            ? next
            : throw new RefusedException(default, "", "the file ends in the middle", "restore its end from a copy");

        private Spot At(Mark mark) => new((int)mark.Index + skip, Math.Max(1, (int)mark.Line), Math.Max(1, (int)mark.Column));
    }
}
