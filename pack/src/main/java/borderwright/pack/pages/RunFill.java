package borderwright.pack.pages;

import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.PageBox;
import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;

/**
 * How far a run of sheets fills its pages.
 *
 * @param run its number
 * @param pages that it takes
 * @param lastShare how much of the height of its last page it takes, 0 to 1
 */
record RunFill(int run, int pages, double lastShare) {
    private static final String ID = "run";

    /** Whether it ends on a page of its own that is less than half full. */
    boolean endsOnAThinPage() {
        return pages > 1 && lastShare < 0.5;
    }

    /** Of every run of a document that is laid out. */
    static List<RunFill> of(BlockBox root) {
        List<PageBox> pages = root.getLayer().getPages();
        List<RunFill> fills = new ArrayList<>();
        add(root, pages, fills);
        return fills;
    }

    private static void add(Box box, List<PageBox> pages, List<RunFill> fills) {
        Element element = box.getElement();
        String id = element == null ? "" : element.getAttribute("id");
        if (id.startsWith(ID)) {
            int top = box.getAbsY();
            int bottom = top + box.getHeight();
            int first = pageAt(pages, top);
            int last = pageAt(pages, bottom - 1);
            PageBox page = pages.get(last);
            double share = (bottom - page.getTop()) / (double) (page.getBottom() - page.getTop());
            fills.add(new RunFill(Integer.parseInt(id.substring(ID.length())), last - first + 1, share));
            return;
        }
        for (int i = 0; i < box.getChildCount(); i++) {
            add(box.getChild(i), pages, fills);
        }
    }

    private static int pageAt(List<PageBox> pages, int y) {
        for (int i = 0; i < pages.size(); i++) {
            if (y < pages.get(i).getBottom()) {
                return i;
            }
        }
        return pages.size() - 1;
    }
}
