namespace ColdSim.App.Text.Html;

/// <summary>
/// The script of a page: it folds the long parts away, and reads values off the curves under the pointer. Without it everything is there and open.
/// </summary>
internal static class PageScript
{
    public const string Text = """

        (function(){'use strict';
        var long=document.querySelectorAll('details.long');
        function open(all){long.forEach(function(d){d.open=all});}
        open(false);addEventListener('beforeprint',function(){open(true)});addEventListener('afterprint',function(){open(false)});
        function points(path){var all=[];(path.getAttribute('d').match(/M[^M]+/g)||[]).forEach(function(part){
        var n=(part.match(/-?\d+/g)||[]).map(Number),x=n[0],y=n[1];all.push([x,y]);
        for(var i=2;n.length>i+1;i+=2){x+=n[i];y+=n[i+1];all.push([x,y]);}all.push(null);});return all;}
        function at(all,x){for(var i=1;i!==all.length;i++){var a=all[i-1],b=all[i];
        if(!a||!b||a[0]>x||x>b[0])continue;{return b[0]===a[0]?b[1]:a[1]+(b[1]-a[1])*(x-a[0])/(b[0]-a[0]);}}return null;}
        function two(n){return(n>9?'':'0')+n;}
        document.querySelectorAll('svg.picture[data-start]').forEach(function(svg){
        var figure=svg.parentNode,curves=Array.prototype.map.call(svg.querySelectorAll('path[data-name]'),function(p){return{p:p,at:points(p)};});
        var minutes=+svg.dataset.minutes,start=new Date(svg.dataset.start+'Z'),box=document.createElement('div'),ns='http://www.w3.org/2000/svg',line=document.createElementNS(ns,'line');
        box.className='readout';box.hidden=true;figure.appendChild(box);
        line.setAttribute('class','pointer');line.setAttribute('y1',22);line.setAttribute('y2',svg.getAttribute('height')-40);line.style.display='none';svg.appendChild(line);
        function hide(){box.hidden=true;line.style.display='none';}
        function show(e){var r=svg.getBoundingClientRect(),f=(e.clientX-r.left)/r.width;if(0>f||f>1){hide();return;}
        var t=new Date(start.getTime()+Math.round(f*minutes)*60000),head=document.createElement('b');
        head.textContent=['Sun','Mon','Tue','Wed','Thu','Fri','Sat'][t.getUTCDay()]+' '+two(t.getUTCHours())+':'+two(t.getUTCMinutes());
        box.textContent='';box.appendChild(head);
        curves.forEach(function(c){var y=at(c.at,f*minutes);if(y===null)return;var d=c.p.dataset,v=+d.high-y/1000*(d.high-d.low),row=document.createElement('div');
        row.textContent=d.name+' '+v.toFixed(+d.digits)+' '+d.unit;box.appendChild(row);});
        line.setAttribute('x1',f*100+'%');line.setAttribute('x2',f*100+'%');line.style.display='';box.hidden=false;
        var w=figure.clientWidth,x=e.clientX-figure.getBoundingClientRect().left;
        box.style.left=Math.max(0,x>w/2?x-box.offsetWidth-12:Math.min(x+12,w-box.offsetWidth))+'px';box.style.top=Math.max(0,e.clientY-r.top-box.offsetHeight/2)+'px';}
        svg.addEventListener('pointermove',show);svg.addEventListener('pointerdown',show);svg.addEventListener('pointerleave',hide);});
        })();

        """;
}
