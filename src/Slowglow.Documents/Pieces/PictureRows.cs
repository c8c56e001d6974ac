using Slowglow.Documents.Drawing;

namespace Slowglow.Documents.Pieces;

/// <summary>Photographs, two beside each other, each with its caption.</summary>
internal static class PictureRows
{
    private const double Gap = 14;
    private const double Tallest = 190;

    public static void Draw(Flow flow, IReadOnlyList<PaperPicture> pictures)
    {
        if (pictures.Count == 0)
        {
            return;
        }

        var wide = (flow.Width - Gap) / 2;
        var read = pictures.Select(p => (p.Caption, Picture: ReadyPicture.Read(p.Content))).ToList();
        foreach (var (row, first) in read.Chunk(2).Select((r, i) => (r, i == 0)))
        {
            var height = row.Max(p => p.Picture?.HeightIn(wide, Tallest) ?? 20) + 30;
            if (first)
            {
                flow.Section("Photographs", height);
            }

            flow.Keep(height);
            flow.Beside([.. row.Select((p, i) => (Action)(() => One(flow, p.Caption, p.Picture, i * (wide + Gap), wide)))]);
            flow.Space(8);
        }

        foreach (var picture in read)
        {
            picture.Picture?.Dispose();
        }
    }

    private static void One(Flow flow, string caption, ReadyPicture? picture, double left, double wide)
    {
        if (picture is null)
        {
            flow.Text("A photograph of this kind cannot be printed; the shop has it.", Face.Small, Face.Faint, left, wide);
        }
        else
        {
            flow.Picture(picture, left, wide, Tallest);
        }

        if (caption.Length > 0)
        {
            flow.Text(caption, Face.Small, Face.Faint, left, wide);
        }
    }
}
