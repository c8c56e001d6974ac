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
        var read = pictures.Select((p, i) => (p.Caption, Picture: ReadyPicture.Read(p.Content), Number: i + 1)).ToList();
        foreach (var (row, first) in read.Chunk(2).Select((r, i) => (r, i == 0)))
        {
            var height = row.Max(p => p.Picture?.HeightIn(wide, Tallest) ?? 20) + 30;
            if (first)
            {
                flow.Section("Photographs", height);
            }

            flow.Keep(height);
            flow.Beside([.. row.Select((p, i) => (Action)(() => One(flow, p, i * (wide + Gap), wide)))]);
            flow.Space(8);
        }

        foreach (var picture in read)
        {
            picture.Picture?.Dispose();
        }
    }

    private static void One(Flow flow, (string Caption, ReadyPicture? Picture, int Number) photo, double left, double wide)
    {
        if (photo.Picture is null)
        {
            flow.Text(PaperPicture.NotPrinted(photo.Caption, photo.Number), Face.Small, Face.Faint, left, wide);
            return;
        }

        flow.Picture(photo.Picture, left, wide, Tallest);
        if (photo.Caption.Length > 0)
        {
            flow.Text(photo.Caption, Face.Small, Face.Faint, left, wide);
        }
    }
}
